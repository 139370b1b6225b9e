import { combine } from '../../chemistry/combine.ts';
import type { HalfEquation } from '../../chemistry/equation.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { wrongEquation } from '../combined-value.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { addedUnscaled, scaledByOwn, sumWithoutElectrons } from '../unscaled-sum.ts';
import type { Value, Values } from '../value.ts';
import type { Ladder } from './stepwise-ladder.ts';
import type { LadderPlan } from './stepwise-plan.ts';
import { coloursTo, coloursValue, datumOf, finalKey, speciesValue } from './stepwise-steps.ts';

type Maker = ReturnType<typeof slipMaker>;

/**
 * Slips at the first e.m.f., the first equation, the final species, the colours and the oxidation numbers.
 * @param isChoice whether the final species is chosen from options: only then can a pupil answer that nothing happens, because the
 * written parts ask for the steps that do
 */
export function ladderSlips(ladder: Ladder, plan: LadderPlan, tables: Tables, words: Words, isChoice: boolean): Slip[] {
  const slip = slipMaker(tables, words, { next: species(ladder.rungs[0]!.to) });
  return [
    ...emfSlips(ladder, slip),
    ...(plan.firstPart ? equationSlips(ladder, slip) : []),
    {
      ...slip(
        'LD-STOPS-EARLY',
        'final',
        () => speciesValue(ladder.rungs[0]!.to),
        () => ladder.rungs.length > 1,
      ),
      skips: plan.emfs.slice(1).map((at) => `emf-${at + 1}`),
    },
    ...(isChoice ? [slip('EP-STRENGTH-REVERSED', 'final', () => speciesValue(ladder.start))] : []),
    // Beyond the last species no potential is printed, so no value can be given.
    { ...slip('LD-GOES-TOO-FAR', 'final', () => speciesValue(ladder.next.to)), skips: ['stop-emf'] },
    ...(plan.sees
      ? [coloursSlip(ladder, tables, slip)]
      : plan.numbers === 'both'
        ? [slip('ON-ION-CHARGE', 'number-start', () => numberValue(Rational.of(ladder.start.charge), { unit: '', signed: true }))]
        : []),
  ];
}

/**
 * Two neighbours change places: of four colours the two in the middle, so that the ends stand. Green after yellow tells nothing where
 * blue comes next, because it is seen while both are there.
 */
function coloursSlip(ladder: Ladder, tables: Tables, slip: Maker): Slip {
  const turned = (values: Values) => swapped(coloursTo(ladder, finalKey(values), tables));
  const canTell = (values: Values) => {
    const right = coloursTo(ladder, finalKey(values), tables);
    return right.length > 2 && !right.some((word, at) => [word, right[at + 1]].sort().join(' ') === 'blue yellow');
  };
  return ladder.rungs.length > 2
    ? slip('LD-COLOURS-SWAPPED', 'colours-between', (values) => coloursValue(turned(values).slice(1, -1)), canTell)
    : slip('LD-COLOURS-SWAPPED', 'colours', (values) => coloursValue(turned(values)), canTell);
}

function halves({ rungs, reagent, isReduction }: Ladder): { readonly reduction: HalfEquation; readonly oxidation: HalfEquation } {
  const rung = rungs[0]!.couple;
  return isReduction ? { reduction: rung.half, oxidation: reagent.half } : { reduction: reagent.half, oxidation: rung.half };
}

function emfSlips(ladder: Ladder, slip: Maker): Slip[] {
  const rung = ladder.rungs[0]!.couple;
  const [gains, gives] = ladder.isReduction ? [rung, ladder.reagent] : [ladder.reagent, rung];
  const high = (values: Values) => numberOf(values, datumOf(gains));
  const low = (values: Values) => numberOf(values, datumOf(gives));
  const volts = (value: Rational): Value => numberValue(value, { unit: 'V', signed: true });
  const { timesReduction, timesOxidation } = combine(gains.half, gives.half);
  return [
    slip('EP-ADD', 'emf-1', (values) => volts(high(values).plus(low(values)))),
    slip('EP-SIGN-DROPPED', 'emf-1', (values) => volts(high(values).abs().minus(low(values).abs()).abs())),
    slip('EP-REVERSED', 'emf-1', (values) => volts(low(values).minus(high(values)))),
    slip('EP-MULTIPLIED', 'emf-1', (values) =>
      volts(high(values).times(timesReduction).minus(low(values).times(timesOxidation))),
    ),
  ];
}

function equationSlips(ladder: Ladder, slip: Maker): Slip[] {
  const { reduction, oxidation } = halves(ladder);
  const { timesReduction, timesOxidation } = combine(reduction, oxidation);
  const shared = ['H^+', 'H2O'].some(
    (key) =>
      [...reduction.left, ...reduction.right].some(({ formula }) => keyOf(formula) === key) &&
      [...oxidation.left, ...oxidation.right].some(({ formula }) => keyOf(formula) === key),
  );
  return [
    slip('HE-ADD-UNSCALED', 'equation', () => wrongEquation(addedUnscaled(reduction, oxidation))),
    slip('HE-SCALE-OWN', 'equation', () => wrongEquation(scaledByOwn(reduction, oxidation))),
    slip(
      'HE-H-NOT-CANCELLED',
      'equation',
      () => wrongEquation(sumWithoutElectrons(reduction, oxidation, timesReduction, timesOxidation, false)),
      () => shared && coefficientOf(reduction.left, 'H^+').sign() > 0,
    ),
  ];
}

/** The second and third colours change places. */
function swapped(right: readonly string[]): readonly string[] {
  const [first, second, third, ...rest] = right;
  return third === undefined ? right : [first!, third, second!, ...rest];
}
