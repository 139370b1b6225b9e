import { elementsIn } from '../../chemistry/composition.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import { quantity } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { wrongEquation } from '../combined-value.ts';
import { type Expression, evaluate, node, number, over, plus, times } from '../expression.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { addedUnscaled, scaledByOwn, sumWithoutElectrons } from '../unscaled-sum.ts';
import type { Value, Values } from '../value.ts';
import type { Titration } from './titration-concentration-build.ts';
import { endValue } from './titration-end.ts';

const THOUSAND = number('1000');

/** Slips at every step. Those that carry the largest teaching value stand first: they become the options of a choice. */
export function titrationSlips(titration: Titration, tables: Tables, words: Words): Slip[] {
  const { units, known, found } = titration;
  const slip = slipMaker(tables, words, {
    ...titration.context,
    volume: quantity('', units.volume),
    afterEquation: titration.ask.answering === 'written',
  });
  const ratioOf = (left: Rational, right: Rational): Value => ({ kind: 'ratio', left, right, of: [found.reacts, known.reacts] });
  const amount = node('found-amount');
  const volume = node(titration.foundVolume);
  const dilution = titration.dilution ? dilutionSlips(titration, slip) : [];
  // Options are taken from the front, and going back to the stock is what a choice about one asks.
  const isChoice = titration.ask.answering === 'choice';
  return [
    ...(isChoice ? dilution : []),
    slip('TI-RATIO-ONE', 'ratio', () => ratioOf(Rational.one, Rational.one)),
    slip('TI-RATIO-INVERTED', 'ratio', () => ratioOf(known.coefficient, found.coefficient)),
    slip('TI-CM3-AS-DM3', 'amount', computed('mol', times(node('c'), node(titration.knownVolume)))),
    ...equationSlips(titration, slip),
    ...(isChoice ? [] : dilution),
    ...(titration.system.acid && titration.foundVolume === 'portion'
      ? [
          slip(
            'TI-WATER-COUNTED',
            'concentration',
            computed(units.concentration, over(times(amount, THOUSAND), plus(volume, node('acid')))),
          ),
        ]
      : []),
    ...(titration.explainsEnd || titration.ask.withoutColours
      ? []
      : [slip('TI-ENDPOINT-REVERSED', 'end', () => endValue(titration.system.after, titration.system.before, words))]),
  ];
}

type Maker = ReturnType<typeof slipMaker>;

function computed(unit: string, expression: Expression) {
  return (values: Values): Value => numberValue(evaluate(expression, values), { unit });
}

/** Between the portion, the flask and the stock. */
function dilutionSlips({ units }: Titration, slip: Maker): Slip[] {
  const strength = (expression: Expression) => computed(units.concentration, expression);
  return [
    slip('TI-ALIQUOT-NOT-SCALED', 'stock', strength(node('concentration'))),
    slip('TI-FLASK-VOLUME', 'concentration', strength(over(times(node('found-amount'), THOUSAND), node('flask')))),
    slip('TI-ALIQUOT-INVERTED', 'stock', strength(times(node('concentration'), over(node('sample'), node('flask'))))),
  ];
}

function equationSlips({ sides }: Titration, slip: Maker): Slip[] {
  const { oxidant, reductant, combined } = sides;
  const [reduction, oxidation] = [oxidant.couple.half, reductant.couple.half];
  const hasCarbon = elementsIn(reductant.reacts).includes('C');
  const acidOnBoth = !coefficientOf(reduction.left, 'H^+').isZero() && !coefficientOf(oxidation.left, 'H^+').isZero();
  return [
    slip('HE-ADD-UNSCALED', 'equation', () => wrongEquation(addedUnscaled(reduction, oxidation))),
    slip('HE-SCALE-OWN', 'equation', () => wrongEquation(scaledByOwn(reduction, oxidation))),
    // One electron for each ethanedioate: as many of them as the oxidant takes electrons.
    slip(
      'TI-OXALATE-ONE-E',
      'equation',
      () => wrongEquation(sumWithoutElectrons(reduction, oxidation, Rational.one, reduction.electrons)),
      () => hasCarbon,
    ),
    slip(
      'HE-H-NOT-CANCELLED',
      'equation',
      () => wrongEquation(sumWithoutElectrons(reduction, oxidation, combined.timesReduction, combined.timesOxidation, false)),
      () => acidOnBoth,
    ),
  ];
}
