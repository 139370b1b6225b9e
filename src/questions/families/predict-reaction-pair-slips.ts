import { combine } from '../../chemistry/combine.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { equationSlips } from '../equation-slips.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { keyAt, wordsValue } from '../statement-step.ts';
import type { Values } from '../value.ts';
import { datumOf } from './predict-reaction-context.ts';
import type { Pair } from './predict-reaction-pair.ts';
import { directionOf, oneOxidises, runs, turnedVerdict } from './predict-reaction-pair-steps.ts';

/** Slips of a question about two species. @param isChoice whether the verdict with its reason is chosen from options */
export function pairSlips(pair: Pair, tables: Tables, isChoice: boolean): Slip[] {
  const slip = slipMaker(tables, pair.words, pair.context);
  return [
    ...(pair.roles ? [] : alikeSlips(pair, slip, isChoice)),
    ...emfSlips(pair, slip),
    ...(pair.roles ? opposedSlips(pair, slip) : []),
    ...equationSlips(slip, 'equation', (values) => {
      const { reduced, oxidised } = runs(pair, values);
      return { reduction: reduced.half, oxidation: oxidised.half };
    }),
  ];
}

type Maker = ReturnType<typeof slipMaker>;

function emfSlips({ roles, high, low }: Pair, slip: Maker): Slip[] {
  const [up, down] = roles ? [roles.taker.couple, roles.giver.couple] : [high, low];
  const reduced = (values: Values) => numberOf(values, datumOf(up));
  const oxidised = (values: Values) => numberOf(values, datumOf(down));
  const volts = (value: Rational) => numberValue(value, { unit: 'V', signed: true });
  const { timesReduction, timesOxidation } = combine(up.half, down.half);
  return [
    slip('EP-REVERSED', 'emf', (values) => volts(oxidised(values).minus(reduced(values)))),
    slip('EP-ADD', 'emf', (values) => volts(reduced(values).plus(oxidised(values)))),
    slip('EP-SIGN-DROPPED', 'emf', (values) => volts(reduced(values).abs().minus(oxidised(values).abs()))),
    slip('EP-MULTIPLIED', 'emf', (values) =>
      volts(reduced(values).times(timesReduction).minus(oxidised(values).times(timesOxidation))),
    ),
  ];
}

/** The verdict turned round, and the species taken from the wrong side of each half-equation. */
function opposedSlips(pair: Pair, slip: Maker): Slip[] {
  const { roles } = pair;
  return [
    slip('EP-STRENGTH-REVERSED', 'verdict', (values) => turnedVerdict(pair, numberOf(values, 'emf').sign() <= 0)),
    slip('EP-WRONG-SPECIES', 'direction', (values) =>
      directionOf(pair, keyAt(values, 'verdict') === 'yes' ? roles!.taker.couple : roles!.giver.couple),
    ),
  ];
}

/** Two agents of one kind are taken to act on each other; the equation is turned round. */
function alikeSlips(pair: Pair, slip: Maker, isChoice: boolean): Slip[] {
  const { words, context, high, low } = pair;
  return [
    slip('EP-WRONG-SPECIES', 'sides', () => wordsValue('opposed', words.inline('answer-opposed', context))),
    isChoice
      ? slip('EP-STRENGTH-REVERSED', 'prediction', () => oneOxidises(pair, low))
      : slip('EP-STRENGTH-REVERSED', 'direction', () => directionOf(pair, high)),
  ];
}
