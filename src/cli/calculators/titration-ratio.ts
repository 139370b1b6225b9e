import { moleRatio } from '../../chemistry/amounts.ts';
import { atomsOf, elementsIn } from '../../chemistry/composition.ts';
import type { Medium } from '../../chemistry/couple.ts';
import type { Equation } from '../../chemistry/equation.ts';
import type { Condition, Facts } from '../../chemistry/facts.ts';
import type { Formula, SpeciesKey } from '../../chemistry/formula.ts';
import type { Step } from '../../chemistry/mixture.ts';
import { react } from '../../chemistry/react.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';
import { Rational } from '../../exact/rational.ts';
import { ingredientOf, type Shelf } from './reactants.ts';

/** All that a titration may be helped by: warming, waiting, a catalyst. */
const HELPED: readonly Condition[] = ['warm', 'time', 'catalyst'];

/** The reaction of a titration and the ratio it gives. */
export interface Reaction {
  readonly step: Step;
  readonly equation: Equation;
  readonly titrant: SpeciesKey;
  readonly analyte: SpeciesKey;
  /** moles of analyte that go with one of titrant */
  readonly ratio: Rational;
}

/**
 * The reaction of titrant and analyte, by the engine that the questions use.
 * @throws Fault `no-reaction` when the table gives none between just these two
 */
export function reactionOf(titrant: string, analyte: string, medium: Medium, shelf: Shelf & { readonly facts: Facts }): Reaction {
  const [one, other] = [titrant, analyte].map((text) => onlySpecies(text, shelf));
  const reactants = [
    { formula: other!, amount: Rational.one },
    { formula: one!, amount: 'excess' as const },
  ];
  const { steps } = react({ reactants, medium, values: 'stored', given: HELPED }, shelf.couples, shelf.facts);
  const keys = { titrant: keyOf(one!), analyte: keyOf(other!) };
  const step = steps.find(({ combined }) => {
    const left = combined.equation.left.map(({ formula }) => keyOf(formula));
    return left.includes(keys.titrant) && left.includes(keys.analyte);
  });
  if (!step) {
    const message = `no reaction of \`${keys.titrant}\` with \`${keys.analyte}\` follows from the table`;
    throw new Fault('no-reaction', `${message}; give the moles of analyte for one of titrant as \`ratio=…\``);
  }
  const { equation } = step.combined;
  return { step, equation, ...keys, ratio: moleRatio(equation, keys.analyte, keys.titrant) };
}

/** The species itself, or the one that a substance brings one of. */
function onlySpecies(text: string, shelf: Shelf): Formula {
  const { reactants, key } = ingredientOf(text, shelf, new Map(), new Set());
  const [first] = reactants;
  if (first!.amount === 'excess' || !first!.amount.equals(Rational.one))
    throw new Fault('no-single-species', `expected the species that reacts, found \`${key}\`, which brings several`);
  return first!.formula;
}

/**
 * How many of what is sought stand for one of the analyte, by the element they share: Fe₂O₃ for Fe²⁺ is ½.
 * @throws Fault `no-shared-element`
 */
export function perAnalyte(sought: Formula, analyte: Formula): Rational {
  const shared = elementsIn(sought).filter((symbol) => symbol !== 'O' && symbol !== 'H' && atomsOf(analyte, symbol) > 0);
  const [symbol] = shared;
  if (symbol === undefined || shared.length > 1) {
    const message = `expected one element beside O and H in both \`${keyOf(sought)}\` and \`${keyOf(analyte)}\``;
    throw new Fault(
      'no-shared-element',
      `${message}; give how many of what is sought stand for one analyte as \`per-analyte=…\``,
    );
  }
  return Rational.of(atomsOf(analyte, symbol), atomsOf(sought, symbol));
}
