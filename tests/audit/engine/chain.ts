import type { Fraction } from '../exact/fraction.ts';
import { type Figures, rounded } from '../exact/rounding.ts';
import { type Answer, marksOf } from './answer.ts';
import type { Answers, Case, Node, Slip } from './case.ts';

/** How figures on the way are kept: in full, or rounded for some steps. */
export type Keeping = ReadonlyMap<string, Figures>;

/** Works every step in order; a slip stands in the place of its step's own work. */
export function worked(nodes: readonly Node[], slip?: Slip, keeping: Keeping = new Map()): Answers {
  const answers = new Map<string, Answer>();
  for (const node of nodes) {
    const answer = slip?.at === node.id ? slip.work(answers) : node.work(answers);
    const figures = keeping.get(node.id);
    answers.set(node.id, figures && answer.kind === 'number' ? { ...answer, value: rounded(answer.value, figures) } : answer);
  }
  return answers;
}

/** The same with every figure on the way as it is printed in the working. */
export function workedAsPrinted(nodes: readonly Node[]): Answers {
  return worked(nodes, undefined, new Map(nodes.map(({ id, figures }) => [id, figures] as const)));
}

/** What is on paper after a step. */
export function shown({ figures, signed }: Node, answer: Answer): string[] {
  return marksOf(answer, figures, signed);
}

/** Steps whose answer on paper is another after a slip. */
export function changedBy({ nodes }: Case, right: Answers, wrong: Answers): Set<string> {
  const onPaper = (node: Node, answers: Answers) => shown(node, answers.get(node.id)!).join('; ');
  return new Set(nodes.filter((node) => onPaper(node, right) !== onPaper(node, wrong)).map(({ id }) => id));
}

/**
 * Least and greatest figure that a marker accepts at a step: each figure on the way kept in full or rounded to three, four or five
 * significant figures, in every combination.
 */
export function acceptedRange(
  nodes: readonly Node[],
  id: string,
): { readonly least: Fraction; readonly most: Fraction } | undefined {
  const node = nodes.find((each) => each.id === id);
  if (!node || node.figures === 'whole') return undefined;
  const before = figuresBefore(nodes, node);
  const found: Fraction[] = [];
  for (let choice = 0; choice < 4 ** before.length; choice += 1) {
    const keeping = new Map<string, Figures>();
    before.forEach((each, at) => {
      const place = Math.floor(choice / 4 ** at) % 4;
      if (place > 0) keeping.set(each, { significant: place + 2 });
    });
    const answer = worked(nodes, undefined, keeping).get(id)!;
    if (answer.kind === 'number') found.push(rounded(answer.value, node.figures));
  }
  found.sort((a, b) => a.compare(b));
  return found.length === 0 ? undefined : { least: found[0]!, most: found.at(-1)! };
}

function figuresBefore(nodes: readonly Node[], node: Node): string[] {
  const before = new Set<string>();
  const visit = ({ needs }: Node) => {
    for (const need of needs) {
      const found = nodes.find(({ id }) => id === need);
      if (!found || before.has(need)) continue;
      before.add(need);
      visit(found);
    }
  };
  visit(node);
  return nodes.filter(({ id, figures }) => before.has(id) && figures !== 'whole').map(({ id }) => id);
}
