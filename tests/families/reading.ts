import type { Formula } from '../../src/chemistry/formula.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import type { Rounding } from '../../src/exact/rounding.ts';
import type { Ask, Built } from '../../src/questions/family.ts';
import { gate } from '../../src/questions/gate/gate.ts';
import type { Item } from '../../src/questions/question.ts';
import { earnedIn, rowsOf } from '../../src/questions/rows.ts';
import { showNumber } from '../../src/questions/show-value.ts';
import { roundValue, solve } from '../../src/questions/solve.ts';
import type { Value } from '../../src/questions/value.ts';
import { tables, wording } from '../support/data.ts';

/** The first phrasing of every section of a family's wording. */
export const wordsOf = (family: string) => wording.words(family);

/** How the cases are asked. */
export const asking = (level: Ask['level'], answering: Ask['answering'] = 'written'): Ask => ({ level, answering, units: 'dm' });

/** A built item that the gate lets through. */
export function checked({ item }: Built): Item {
  const failures = gate(item, tables);
  if (failures.length > 0) throw new Error(failures.map(({ rule, problem }) => `${rule}: ${problem}`).join('\n'));
  return item;
}

/** A value as a marker would read it: `+0.42 V`, `2Fe^3+ + …`, `I2`, `5 : 1`, or the key of a statement. */
function told(value: Value, rule: Rounding): string {
  switch (value.kind) {
    case 'number':
      return [showNumber(value.value, rule, value.signed), value.unit].filter((each) => each !== '').join(' ');
    case 'equation':
      return writeEquation(value.equation);
    case 'species':
      return keyOf(value.formula);
    case 'ratio':
      return `${value.left} : ${value.right}`;
    case 'words':
      return value.key;
    case 'list':
      return value.values.map((each) => told(each, rule)).join(', ');
  }
}

/** What the scheme gives as right at a step. */
export function answerAt(item: Item, id: string): string {
  const step = item.steps.find((each) => each.id === id)!;
  return told(roundValue(solve(item, 'printed').get(id)!, step.printed), step.printed);
}

/**
 * What the scheme says of a misconception, part by part: what the marker sees, then marks earned of marks there are. `b: I2 1/2`
 * @param at the step it shows at, where a misconception can show at several
 */
export function marked(item: Item, misconception: string, at?: string): string[] {
  const row = rowsOf(item).find(
    (each) => (each.slip === misconception || each.aliases.includes(misconception)) && (at === undefined || each.at === at),
  );
  if (!row) return [];
  return item.parts.map((part) => {
    const seen = (row.seen.get(part.id) ?? []).map(({ step, value }) => {
      const { printed } = item.steps.find(({ id }) => id === step)!;
      return told(roundValue(value, printed), printed);
    });
    return `${part.id}: ${[...seen, `${earnedIn(row, part)}/${part.points.length}`].join('; ')}`;
  });
}

/** All texts, formulas and numbers of a tree, in order. */
export function plainText(tree: unknown): string {
  if (Array.isArray(tree)) return tree.map(plainText).join('');
  if (typeof tree !== 'object' || tree === null) return '';
  const { text, number, formula } = tree as { text?: unknown; number?: unknown; formula?: Formula };
  if (formula) return keyOf(formula);
  if (typeof text === 'string') return text;
  if (typeof number === 'string') return number;
  return Object.values(tree).map(plainText).join('');
}
