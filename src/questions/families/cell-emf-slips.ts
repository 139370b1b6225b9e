import { combine } from '../../chemistry/combine.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import type { Words } from '../../document/words.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { wrongEquation } from '../combined-value.ts';
import type { Ask } from '../family.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { wordsValue } from '../statement-step.ts';
import { addedUnscaled, scaledByOwn, sumWithoutElectrons } from '../unscaled-sum.ts';
import type { Values } from '../value.ts';
import type { CellFacts } from './cell-emf-facts.ts';
import { directionValue, runContext, runs } from './cell-emf-steps.ts';

/** Slips at the e.m.f.: also the wrong options when it is asked as a choice. */
export function emfSlips({ positive, negative }: CellFacts, tables: Tables, words: Words): Slip[] {
  const slip = slipMaker(tables, words);
  const volts = (value: Rational) => numberValue(value, { unit: 'V', signed: true });
  const high = (values: Values) => numberOf(values, positive.datum);
  const low = (values: Values) => numberOf(values, negative.datum);
  const { timesReduction, timesOxidation } = combine(positive.couple.half, negative.couple.half);
  return [
    slip('EP-ADD', 'emf', (values) => volts(high(values).plus(low(values)))),
    slip('EP-SIGN-DROPPED', 'emf', (values) => volts(high(values).abs().minus(low(values).abs()).abs())),
    slip('EP-REVERSED', 'emf', (values) => volts(low(values).minus(high(values)))),
    slip('EP-MULTIPLIED', 'emf', (values) => volts(high(values).times(timesReduction).minus(low(values).times(timesOxidation)))),
  ];
}

/** Slips at the later steps of the written question. */
export function cellSlips(facts: CellFacts, tables: Tables, words: Words, ask: Ask): Slip[] {
  const { positive, negative, cells } = facts;
  const slip = slipMaker(tables, words);
  const turnedRound = () => directionValue(positive, negative, words);
  return [
    slip('EP-STRENGTH-REVERSED', 'direction', turnedRound),
    slip('EP-LEFT-IS-ANODE', 'direction', turnedRound, () => cells[0] === positive),
    slip('HE-ADD-UNSCALED', 'equation', (values) => {
      const { oxidised, reduced } = runs(values, facts);
      return wrongEquation(addedUnscaled(reduced.couple.half, oxidised.couple.half));
    }),
    slip('HE-SCALE-OWN', 'equation', (values) => {
      const { oxidised, reduced } = runs(values, facts);
      return wrongEquation(scaledByOwn(reduced.couple.half, oxidised.couple.half));
    }),
    slip(
      'HE-H-NOT-CANCELLED',
      'equation',
      (values) => {
        const { oxidised, reduced } = runs(values, facts);
        const { timesReduction, timesOxidation } = combine(reduced.couple.half, oxidised.couple.half);
        return wrongEquation(
          sumWithoutElectrons(reduced.couple.half, oxidised.couple.half, timesReduction, timesOxidation, false),
        );
      },
      // What does not cancel is balanced and true all the same: no wrong option.
      () => ask.answering !== 'choice' && (bothHold(facts, 'H^+') || bothHold(facts, 'H2O')),
    ),
    slip('EP-ELECTRONS-IN-SOLUTION', 'flow', () => wordsValue('through the bridge', words.inline('answer-flow-bridge'))),
    ...(ask.level === 'stretch'
      ? [
          slip('EP-BRIDGE-DIRECTION', 'bridge', (values: Values) => {
            const { oxidised, reduced } = runs(values, facts);
            return wordsValue(`answer-bridge ${reduced.label}`, words.inline('answer-bridge', runContext(reduced, oxidised)));
          }),
        ]
      : []),
  ];
}

/** True when a species stands on the same side of both half-equations, so that some of it cancels in the sum. */
function bothHold({ positive, negative }: CellFacts, key: string): boolean {
  const holds = ({ couple }: CellFacts['positive']) =>
    [couple.half.left, couple.half.right].map((side) => !coefficientOf(side, key).isZero());
  const [one, other] = [holds(positive), holds(negative)];
  return one.some((stands, side) => stands && other[side]);
}
