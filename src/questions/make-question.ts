import type { Wording } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import type { Tables } from '../potentials/tables.ts';
import { codeOf } from '../random/code.ts';
import { drawsFrom } from '../random/draws.ts';
import type { Ask, Family } from './family.ts';
import { gate } from './gate/gate.ts';
import type { GateFailure } from './gate/rule.ts';
import type { Question } from './question.ts';

/** Draws of one stream that are tried before a family is said to fail. */
const MOST_ATTEMPTS = 600;

/** A place in a paper that a question is made for. */
export interface Slot {
  readonly slot: string;
  readonly variant: number;
  readonly code: string;
}

/** The slot of a paper: its code follows from the paper's seed, the family, the slot's label and the variant. */
export function slotOf(paperSeed: string, family: string, slot: string, variant: number): Slot {
  return { slot, variant, code: codeOf([paperSeed, family, slot, variant]) };
}

/**
 * Makes the question that a code stands for. Family, code, level, answering, units and table decide it; nothing else does.
 * @throws Fault `no-question` naming the family, the code and the rule, when no draw of the stream passes the gate
 */
export function makeQuestion(family: Family, slot: Slot, ask: Ask, tables: Tables, wording: Wording): Question {
  const draws = drawsFrom(JSON.stringify([family.id, slot.code]));
  // Phrasings have a stream of their own, so that a department's wording does not change the chemistry.
  const phrasing = drawsFrom(JSON.stringify([family.id, slot.code, 'wording']));
  const words = wording.words(family.id).chosenBy((count) => phrasing.integer(0, count - 1));
  let last: GateFailure | undefined;
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt += 1) {
    const item = family.attempt(draws, tables, ask, words);
    if (!item) continue;
    const failures = gate(item, tables);
    if (failures.length === 0) return { ...item, ...slot, family: family.id, level: ask.level };
    last = failures[0]!;
  }
  const why = last ? `the last draw broke the rule ${last.rule}: ${last.problem}` : 'no draw gave chemistry that fits';
  throw new Fault(
    'no-question',
    `\`${family.id}\` at level ${ask.level} makes no question from code ${slot.code} with this table; ${why}`,
  );
}
