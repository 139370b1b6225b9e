import type { Inline } from '../../document/inline.ts';
import { species, text } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Words } from '../../document/words.ts';
import type { Rounding } from '../../exact/rounding.ts';
import { ratioAt, ratioIn, wholeValue, writtenRatio } from '../amount-ratio.ts';
import { combinedValue } from '../combined-value.ts';
import { node, number, over, times } from '../expression.ts';
import { valueAt } from '../number-of.ts';
import { numberStep } from '../number-step.ts';
import type { PartId, Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { NodeId, Value, Values } from '../value.ts';
import type { Titration } from './titration-concentration-build.ts';
import { endSteps } from './titration-end.ts';
import type { Side } from './titration-sides.ts';

/** Steps in working order: amount known, equation, ratio, amount unknown, concentration, dilution, end point. */
export function titrationSteps(titration: Titration, words: Words): Step[] {
  const { sides, dilution, known, found } = titration;
  return [
    amountStep(titration),
    plainStep('reaction', 'b', [], 'which species react and what they turn into', () =>
      wordsValue('reaction', words.inline('point-direction', titration.context)),
    ),
    plainStep('equation', 'b', ['reaction'], 'the electrons given equal the electrons taken', () =>
      combinedValue(sides.oxidant.couple, sides.reductant.couple),
    ),
    plainStep('ratio', 'c', ['equation'], 'the coefficients of the equation are the ratio of amounts', (values) =>
      ratioValue(values, found, known),
    ),
    plainStep('found-coefficient', 'c', ['ratio'], 'how many of the unknown species', (values) =>
      wholeValue(ratioAt(values).left),
    ),
    plainStep('known-coefficient', 'c', ['ratio'], 'how many of the known species', (values) =>
      wholeValue(ratioAt(values).right),
    ),
    foundAmountStep(titration),
    concentrationStep(titration),
    ...(dilution ? [stockStep(titration)] : []),
    ...endSteps(titration, words),
  ];
}

/** `n(MnO₄⁻)` or `c(Fe²⁺)`. */
export function symbolOf(letter: 'n' | 'c', side: Side): Inline {
  return symbol(letter, [species(side.reacts)]);
}

/** How each node is printed inside a line of working. */
function shownIn({ concentration, portion, titre, dilution }: Titration): (id: NodeId) => Rounding {
  const places: Readonly<Record<NodeId, Rounding>> = {
    c: { dp: concentration.places },
    portion: { dp: portion.places },
    titre: { dp: titre.places },
    sample: { dp: dilution?.sample.places ?? 0 },
    flask: { dp: dilution?.flask.places ?? 0 },
    concentration: { sf: dilution ? 4 : 3 },
    'found-coefficient': 'exact',
    'known-coefficient': 'exact',
  };
  return (id) => places[id] ?? { sf: 4 };
}

function amountStep(titration: Titration): Step {
  return numberStep({
    id: 'amount',
    part: 'a',
    principle: 'amount = concentration × volume',
    expression: over(times(node('c'), node(titration.knownVolume)), number('1000')),
    unit: 'mol',
    printed: { sf: 4 },
    left: [symbolOf('n', titration.known)],
    shown: shownIn(titration),
  });
}

function foundAmountStep(titration: Titration): Step {
  const { found, known } = titration;
  return numberStep({
    id: 'found-amount',
    part: 'c',
    principle: 'amounts react in the ratio of the equation',
    expression: over(times(node('amount'), node('found-coefficient')), node('known-coefficient')),
    written: writtenRatio(found.coefficient, known.coefficient),
    unit: 'mol',
    printed: { sf: 4 },
    left: [symbolOf('n', found)],
    shown: shownIn(titration),
  });
}

function concentrationStep(titration: Titration): Step {
  return numberStep({
    id: 'concentration',
    part: 'c',
    principle: 'concentration = amount ÷ volume that held it',
    expression: over(times(node('found-amount'), number('1000')), node(titration.foundVolume)),
    unit: titration.units.concentration,
    printed: { sf: titration.dilution ? 4 : 3 },
    left: [symbolOf('c', titration.found)],
    shown: shownIn(titration),
  });
}

function stockStep(titration: Titration): Step {
  return numberStep({
    id: 'stock',
    part: 'c',
    principle: 'the stock is stronger by flask volume ÷ volume taken',
    expression: times(node('concentration'), over(node('flask'), node('sample'))),
    unit: titration.units.concentration,
    printed: { sf: 3 },
    left: [...[symbolOf('c', titration.found)], text(' in the stock')],
    shown: shownIn(titration),
  });
}

/** The ratio of the amounts as the pupil's equation gives it. */
function ratioValue(values: Values, found: Side, known: Side): Value {
  const value = valueAt(values, 'equation');
  if (value.kind !== 'equation') throw new Error('expected an equation');
  return ratioIn(value.equation, found.reacts, known.reacts);
}

/** The step whose value is the answer of the concentration part. */
export const lastStep = ({ dilution }: Titration): { readonly id: NodeId; readonly part: PartId } => ({
  id: dilution ? 'stock' : 'concentration',
  part: 'c',
});
