import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { numberValue } from '../number-step.ts';
import { numberFrom } from '../oxidation-account.ts';
import type { Level, MisconceptionId, Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import type { Reaction } from './oxidation-number-reaction.ts';
import { stateValue } from './oxidation-number-steps.ts';
import { wrongNumbers } from './oxidation-number-wrong.ts';

/**
 * Wrong sums along a reaction. One who reckons an ion wrongly reckons its product the same way: of `[Fe(CN)₆]³⁻` and `[Fe(CN)₆]⁴⁻` both
 * numbers are wrong. A product of one element alone needs no sum, and oxygen outside a peroxide is −2 by rule, so that only the first
 * number is; a charge that a neutral product has not got is wrong in the first alone, too.
 */
export function alongSlips(reaction: Reaction, level: Level, tables: Tables, words: Words): Slip[] {
  const { before, after } = reaction;
  const needsSum = after.account.others.length > 0 && reaction.element !== 'O';
  const [first, second] = [wrongFor(reaction, before), wrongFor(reaction, after)];
  const right = numberFrom(after.account);
  return Object.entries(first).flatMap(([id, from]) => {
    const to = (needsSum ? second[id] : undefined) ?? right;
    if (!from || (level === 'stretch' && !leadsOn(id, from, to))) return [];
    const other = to.equals(right) ? {} : { other: species(after.formula) };
    const slip = slipMaker(tables, words, { formula: species(before.formula), ...other });
    if (!needsSum) return [slip(id, 'before', () => stateValue(from))];
    return level === 'core'
      ? [slip(id, 'change', () => ({ kind: 'list', joiner: 'then', values: [stateValue(from), stateValue(to)] }))]
      : [slip(id, 'per-atom', () => numberValue(from.minus(to), { unit: '' }))];
  });
}

/**
 * Whether electrons are counted from it: a number that does not fall is seen by the pupil to be wrong, and who has the total for all
 * atoms does not multiply by the atoms again.
 */
function leadsOn(id: MisconceptionId, from: Rational, to: Rational): boolean {
  return from.compare(to) > 0 && id !== 'ON-NOT-PER-ATOM';
}

/** Oxygen that is reduced was in a peroxide. */
function wrongFor({ element }: Reaction, { account }: Reaction['before']): ReturnType<typeof wrongNumbers> {
  return wrongNumbers(account, element === 'O' ? 'peroxide' : account.complexCharge === undefined ? undefined : 'complex');
}
