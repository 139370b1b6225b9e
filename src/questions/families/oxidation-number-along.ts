import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { numberValue } from '../number-step.ts';
import { numberFrom } from '../oxidation-account.ts';
import type { Level, Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import type { Reaction } from './oxidation-number-reaction.ts';
import { stateValue } from './oxidation-number-steps.ts';
import { wrongNumbers } from './oxidation-number-wrong.ts';

/**
 * Wrong sums along a reaction. One who reckons an ion wrongly reckons its product the same way: of `[Fe(CN)₆]³⁻` and `[Fe(CN)₆]⁴⁻` both
 * numbers are wrong. A product of one element alone needs no sum, and oxygen outside a peroxide is −2 by
 * rule, so that only the first number is.
 */
export function alongSlips(reaction: Reaction, level: Level, tables: Tables, words: Words): Slip[] {
  const { before, after } = reaction;
  const needsSum = after.account.others.length > 0 && reaction.element !== 'O';
  const [first, second] = [wrongFor(reaction, before), wrongFor(reaction, after)];
  const context = { formula: species(before.formula), ...(needsSum ? { other: species(after.formula) } : {}) };
  const slip = slipMaker(tables, words, context);
  return Object.entries(first).flatMap(([id, from]) => {
    const to = (needsSum ? second[id] : undefined) ?? numberFrom(after.account);
    // Where electrons are counted, a number that does not fall is seen by the pupil to be wrong.
    if (!from || (level === 'stretch' && from.compare(to) <= 0)) return [];
    if (!needsSum) return [slip(id, 'before', () => stateValue(from))];
    return level === 'core'
      ? [slip(id, 'change', () => ({ kind: 'list', joiner: 'then', values: [stateValue(from), stateValue(to)] }))]
      : [slip(id, 'per-atom', () => numberValue(from.minus(to), { unit: '' }))];
  });
}

/** Oxygen that is reduced was in a peroxide. */
function wrongFor({ element }: Reaction, { account }: Reaction['before']): ReturnType<typeof wrongNumbers> {
  return wrongNumbers(account, element === 'O' ? 'peroxide' : account.complexCharge === undefined ? undefined : 'complex');
}
