import { COLOUR_WORDS } from './chemistry/colours.ts';
import type { PaperDocuments } from './plain.ts';

/** One corruption of finished documents: made, looked at, and taken back. */
export interface Mutation {
  readonly kind: 'coefficient' | 'figure' | 'mark' | 'colour' | 'charge' | 'letter' | 'carrying';
  /** where it stands: `sheet question 1 part b …` or `scheme 1b seen wrote` */
  readonly where: string;
  readonly from: string;
  readonly to: string;
  apply(): void;
  undo(): void;
}

type Tree = { [key: string]: unknown };

/** Every corruption of the kinds above, one at a time, of both documents of a paper. */
export function mutationsOf({ sheet, scheme }: PaperDocuments): Mutation[] {
  return [...inTree(sheet as unknown as Tree, 'sheet'), ...inTree(scheme as unknown as Tree, 'scheme')];
}

function inTree(tree: Tree, where: string): Mutation[] {
  const here = placeOf(tree, where);
  const own = Object.keys(tree).flatMap((key) => inValue(tree, key, here));
  const inner = Object.entries(tree).flatMap(([key, value]) => {
    const at = `${here} ${key}`;
    if (Array.isArray(value))
      return value.flatMap((each) => (isTree(each) ? inTree(each, at) : Array.isArray(each) ? inList(each, at) : []));
    return isTree(value) && key !== 'formula' ? inTree(value, at) : [];
  });
  return [...own, ...inner].filter(({ from, to }) => from !== to);
}

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value);
const inList = (list: readonly unknown[], at: string): Mutation[] =>
  list.flatMap((each) => (isTree(each) ? inTree(each, at) : Array.isArray(each) ? inList(each, at) : []));

function placeOf(tree: Tree, where: string): string {
  if (tree.kind === 'scheme') return `scheme ${String(tree.label)}`;
  if (tree.kind === 'question') return `sheet question ${String(tree.number)}`;
  return tree.kind === 'part' ? `${where.split(' parts')[0]} part ${String(tree.letter ?? '')}` : where;
}

function change(kind: Mutation['kind'], where: string, tree: Tree, key: string, to: unknown): Mutation {
  const from = tree[key];
  return {
    kind,
    where: `${where} ${key}`,
    from: String(from),
    to: String(to),
    apply: () => {
      tree[key] = to;
    },
    undo: () => {
      tree[key] = from;
    },
  };
}

function inValue(tree: Tree, key: string, where: string): Mutation[] {
  const value = tree[key];
  if (key === 'coefficient' && typeof value === 'string') return [change('coefficient', where, tree, key, raised(value))];
  if (key === 'number' && tree.kind === 'quantity' && typeof value === 'string' && /\d/.test(value)) {
    return [change('figure', where, tree, key, otherFigure(value))];
  }
  if (key === 'marks' && typeof value === 'number') return [change('mark', where, tree, key, value + 1)];
  if (key === 'formula' && tree.kind === 'formula' && isTree(value)) {
    return [change('charge', where, value, 'charge', Number(value.charge) + 1)];
  }
  if (key === 'carries') return [change('carrying', where, tree, key, !value)];
  if (key === 'letter' && tree.kind === undefined) return [change('letter', where, tree, key, value === 'A' ? 'B' : 'A')];
  if (key === 'facts' && Array.isArray(value)) return factsOf(value, where);
  return key === 'text' && typeof value === 'string' ? inText(tree, value, where) : [];
}

/** Marks in the head and the strip. */
function factsOf(facts: unknown[], where: string): Mutation[] {
  return facts.flatMap((fact, at) => {
    if (typeof fact !== 'string' || !/\d/.test(fact)) return [];
    return [change('mark', `${where} facts`, facts as unknown as Tree, String(at), otherFigure(fact))];
  });
}

function inText(tree: Tree, text: string, where: string): Mutation[] {
  const colours = [...text.matchAll(COLOUR_WORDS)].map((match) => {
    const to = /orange/.test(match[0]) ? 'white' : 'orange';
    return change('colour', where, tree, 'text', text.slice(0, match.index) + to + text.slice(match.index + match[0].length));
  });
  const isMarks = /^\d+ of \d+/.test(text) || /strip facts|facts value/.test(where);
  const marks = isMarks
    ? [
        change(
          'mark',
          where,
          tree,
          'text',
          text.replace(/\d/, (digit) => String((Number(digit) + 1) % 10)),
        ),
      ]
    : [];
  const figures = isMarks
    ? []
    : [...text.matchAll(/\d+(?:\.\d+)?/g)].map((match) => {
        const to = text.slice(0, match.index) + otherFigure(match[0]) + text.slice(match.index + match[0].length);
        return change('figure', where, tree, 'text', to);
      });
  const key = /^[A-H] {2}/.test(text)
    ? [change('letter', where, tree, 'text', (text.startsWith('A') ? 'B' : 'A') + text.slice(1))]
    : [];
  return [...colours, ...marks, ...figures, ...key];
}

const raised = (coefficient: string): string => (/^\d+$/.test(coefficient) ? String(Number(coefficient) + 1) : '7');

/** The last digit of the figure one higher, before any power of ten. */
function otherFigure(text: string): string {
  const [, head = '', digit = '0', tail = ''] = /^(.*?)(\d)((?: × 10.*)?|\D*)$/.exec(text) ?? [];
  return `${head}${(Number(digit) + 1) % 10}${tail}`;
}
