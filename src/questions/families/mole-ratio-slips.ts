import { joined } from '../../chemistry/cell.ts';
import { elementsIn } from '../../chemistry/composition.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { ratioIn } from '../amount-ratio.ts';
import { wrongEquation } from '../combined-value.ts';
import { type Expression, evaluate, minus, node, number, over, plus, times } from '../expression.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { addedUnscaled, scaledByOwn, sumWithoutElectrons } from '../unscaled-sum.ts';
import type { NodeId, Value, Values } from '../value.ts';
import { atomCounts, massOf, type RatioPlan, waterIn } from './mole-ratio-plan.ts';
import { lastStep, molarExpression } from './mole-ratio-steps.ts';

type Maker = ReturnType<typeof slipMaker>;

/** Slips, the most common first; those on the way to the answer become the options of a choice. */
export function ratioSlips(plan: RatioPlan, tables: Tables, words: Words, context: WordsContext): Slip[] {
  const slip = slipMaker(tables, words, context);
  const { drawn, found, known } = plan;
  const right = ratioIn(joined(drawn.oxidant, drawn.reductant).equation, found.species, known.species);
  return [
    slip('TI-RATIO-ONE', 'ratio', (): Value => ({ ...right, left: Rational.one, right: Rational.one })),
    slip('TI-RATIO-INVERTED', 'ratio', (): Value => ({ ...right, left: right.right, right: right.left })),
    ...(plan.weighsKnown ? [] : [slip('TI-CM3-AS-DM3', 'amount', computed('mol', times(node('c'), node('V'))))]),
    ...(plan.weighsKnown && plan.weighsFound ? [massRatio(plan, slip)] : []),
    ...waterSlips(plan, tables, slip),
    ...atomSlips(plan, tables, slip),
    ...(plan.equationPart ? equationSlips(plan, slip) : []),
  ];
}

function computed(unit: string, expression: Expression) {
  return (values: Values): Value => numberValue(evaluate(expression, values), { unit });
}

/** The coefficients taken as a ratio of masses: neither an amount nor a molar mass is then worked out on the way. */
function massRatio(plan: RatioPlan, slip: Maker): Slip {
  const masses = over(times(node('m'), node('found-coefficient')), node('known-coefficient'));
  return { ...slip('TI-MASS-RATIO', lastStep(plan), computed('g', masses)), skips: ['found-amount', 'molar-found'] };
}

/** The molar mass of the salt without its water. */
function waterSlips({ known, found, weighsKnown, weighsFound }: RatioPlan, tables: Tables, slip: Maker): Slip[] {
  const weighed: [NodeId, typeof known, boolean][] = [
    ['molar-known', known, weighsKnown],
    ['molar-found', found, weighsFound],
  ];
  return weighed.flatMap(([at, { salt }, isWeighed]) => {
    const waters = waterIn(salt);
    if (!isWeighed || waters === 0) return [];
    const water = plus(times(number('2'), node(massOf('H'))), node(massOf('O')));
    const anhydrous = minus(molarExpression(atomCounts(salt, tables)), times(number(String(waters)), water));
    return [slip('TI-ANHYDROUS-M', at, computed('g mol^-1', anhydrous))];
  });
}

/** An element of two atoms weighed as if it were of one: 126.9 for iodine. */
function atomSlips({ known, found, weighsKnown, weighsFound }: RatioPlan, tables: Tables, slip: Maker): Slip[] {
  const weighed = [
    ...(weighsKnown ? [['molar-known', known] as const] : []),
    ...(weighsFound ? [['molar-found', found] as const] : []),
  ];
  return weighed.flatMap(([at, { salt }]) => {
    const [only, ...others] = atomCounts(salt, tables);
    if (!only || others.length > 0 || only.atoms === 1) return [];
    return [slip('TI-ONE-ATOM-M', at, computed('g mol^-1', node(massOf(only.symbol))))];
  });
}

function equationSlips({ drawn }: RatioPlan, slip: Maker): Slip[] {
  const { oxidant, reductant } = drawn;
  const [reduction, oxidation] = [oxidant.half, reductant.half];
  const { timesReduction, timesOxidation } = joined(oxidant, reductant);
  const hasCarbon = elementsIn(reductant.reduced).includes('C');
  const acidOnBoth = [reduction, oxidation].every(({ left }) => !coefficientOf(left, 'H^+').isZero());
  return [
    slip('HE-ADD-UNSCALED', 'equation', () => wrongEquation(addedUnscaled(reduction, oxidation))),
    slip('HE-SCALE-OWN', 'equation', () => wrongEquation(scaledByOwn(reduction, oxidation))),
    slip(
      'TI-OXALATE-ONE-E',
      'equation',
      () => wrongEquation(sumWithoutElectrons(reduction, oxidation, Rational.one, reduction.electrons)),
      () => hasCarbon,
    ),
    slip(
      'HE-H-NOT-CANCELLED',
      'equation',
      () => wrongEquation(sumWithoutElectrons(reduction, oxidation, timesReduction, timesOxidation, false)),
      () => acidOnBoth,
    ),
  ];
}
