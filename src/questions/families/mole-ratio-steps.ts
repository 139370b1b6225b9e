import { joined } from '../../chemistry/cell.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { Inline } from '../../document/inline.ts';
import { species } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Words } from '../../document/words.ts';
import type { Rounding } from '../../exact/rounding.ts';
import type { Tables } from '../../potentials/tables.ts';
import { ratioAt, ratioIn, wholeValue, writtenRatio } from '../amount-ratio.ts';
import { combinedValue } from '../combined-value.ts';
import { type Expression, node, number, over, plus, times } from '../expression.ts';
import { valueAt } from '../number-of.ts';
import { numberStep } from '../number-step.ts';
import type { PartId, Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { NodeId, Values } from '../value.ts';
import { atomCounts, massOf, type RatioPlan, waterIn } from './mole-ratio-plan.ts';

const THOUSAND = number('1000');

/** Steps in working order: equation, ratio, known amount, amount found, and what is asked of it. */
export function ratioSteps(plan: RatioPlan, tables: Tables, words: Words, units: { readonly volume: string }): Step[] {
  const { drawn, known, found, equationPart, ratioPart, amountPart, lastPart } = plan;
  const { oxidant, reductant } = drawn;
  const printed = joined(oxidant, reductant).equation;
  const ratio = (values: Values) => {
    const value = equationPart ? valueAt(values, 'equation') : undefined;
    return ratioIn(value?.kind === 'equation' ? value.equation : printed, found.species, known.species);
  };
  return [
    ...(equationPart
      ? [
          plainStep('reaction', equationPart, [], 'which species react and what they turn into', () =>
            wordsValue('reaction', words.inline('answer-reaction')),
          ),
          plainStep('equation', equationPart, ['reaction'], 'the electrons given equal the electrons taken', () =>
            combinedValue(oxidant, reductant),
          ),
        ]
      : []),
    plainStep(
      'ratio',
      ratioPart,
      equationPart ? ['equation'] : [],
      'the coefficients of the equation are the ratio of amounts',
      ratio,
    ),
    plainStep('found-coefficient', ratioPart, ['ratio'], 'how many of the species asked for', (values) =>
      wholeValue(ratioAt(values).left),
    ),
    plainStep('known-coefficient', ratioPart, ['ratio'], 'how many of the species that is known', (values) =>
      wholeValue(ratioAt(values).right),
    ),
    ...(plan.weighsKnown ? [molarStep('molar-known', amountPart, known.salt, plan, tables)] : []),
    amountStep(plan),
    foundAmountStep(plan),
    ...(plan.weighsFound ? [molarStep('molar-found', lastPart, found.salt, plan, tables)] : []),
    ...askedSteps(plan, units),
  ];
}

/** The step whose value the last part asks for. */
export function lastStep({ drawn }: RatioPlan): NodeId {
  return drawn.found.measure === 'amount' ? 'found-amount' : 'asked';
}

/** `n(Fe²⁺)`, `M(KMnO₄)` … */
export function symbolOf(letter: 'n' | 'M' | 'm' | 'V', formula: Formula): Inline {
  return symbol(letter, [species(formula)]);
}

function shownIn({ drawn }: RatioPlan): (id: NodeId) => Rounding {
  const { concentration, volume, mass, foundConcentration } = drawn;
  const places: Readonly<Record<NodeId, Rounding>> = {
    c: { dp: concentration?.places ?? 0 },
    V: { dp: volume?.places ?? 0 },
    m: { dp: mass?.places ?? 0 },
    'c-found': { dp: foundConcentration?.places ?? 0 },
    'molar-known': { dp: 1 },
    'molar-found': { dp: 1 },
    'found-coefficient': 'exact',
    'known-coefficient': 'exact',
  };
  return (id) => (id.startsWith('Ar:') ? { dp: 1 } : (places[id] ?? { sf: 4 }));
}

/** A molar mass from printed relative atomic masses, element by element; of a single atom it is read off, and there is nothing to write out. */
function molarStep(id: NodeId, part: PartId, salt: Formula, plan: RatioPlan, tables: Tables): Step {
  const counts = atomCounts(salt, tables);
  const { line, ...step } = numberStep({
    id,
    part,
    principle: `molar mass = sum of the relative atomic masses${waterIn(salt) > 0 ? ', water of crystallisation included' : ''}`,
    expression: molarExpression(counts),
    unit: 'g mol^-1',
    printed: { dp: 1 },
    left: [symbolOf('M', salt)],
    shown: shownIn(plan),
  });
  const isAtom = counts.length === 1 && counts[0]!.atoms === 1;
  return isAtom || !line ? step : { ...step, line };
}

export function molarExpression(counts: readonly { readonly symbol: string; readonly atoms: number }[]): Expression {
  const terms = counts.map(({ symbol: element, atoms }) =>
    atoms === 1 ? node(massOf(element)) : times(number(String(atoms)), node(massOf(element))),
  );
  return terms.reduce((sum, term) => plus(sum, term));
}

function amountStep(plan: RatioPlan): Step {
  return numberStep({
    id: 'amount',
    part: plan.amountPart,
    principle: plan.weighsKnown ? 'amount = mass ÷ molar mass' : 'amount = concentration × volume',
    expression: plan.weighsKnown ? over(node('m'), node('molar-known')) : over(times(node('c'), node('V')), THOUSAND),
    unit: 'mol',
    printed: { sf: 4 },
    left: [symbolOf('n', plan.known.species)],
    shown: shownIn(plan),
  });
}

function foundAmountStep(plan: RatioPlan): Step {
  const { oxidant, reductant } = plan.drawn;
  const { left, right } = ratioIn(joined(oxidant, reductant).equation, plan.found.species, plan.known.species);
  return numberStep({
    id: 'found-amount',
    part: plan.lastPart,
    principle: 'amounts react in the ratio of the equation',
    expression: over(times(node('amount'), node('found-coefficient')), node('known-coefficient')),
    written: writtenRatio(left, right),
    unit: 'mol',
    printed: { sf: plan.drawn.found.measure === 'amount' ? 3 : 4 },
    left: [symbolOf('n', plan.found.species)],
    shown: shownIn(plan),
  });
}

function askedSteps(plan: RatioPlan, units: { readonly volume: string }): Step[] {
  const { found, drawn, lastPart, weighsFound } = plan;
  if (drawn.found.measure === 'amount') return [];
  return [
    numberStep({
      id: 'asked',
      part: lastPart,
      principle: weighsFound ? 'mass = amount × molar mass' : 'volume = amount ÷ concentration',
      expression: weighsFound
        ? times(node('found-amount'), node('molar-found'))
        : over(times(node('found-amount'), THOUSAND), node('c-found')),
      unit: weighsFound ? 'g' : units.volume,
      printed: { sf: 3 },
      left: [symbolOf(weighsFound ? 'm' : 'V', weighsFound ? found.salt : found.species)],
      shown: shownIn(plan),
    }),
  ];
}
