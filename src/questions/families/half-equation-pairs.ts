import type { SpeciesKey } from '../../chemistry/formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { HonestPair } from '../honest-pairs.ts';
import type { Level } from '../question.ts';
import { type HalfPlan, planOf } from './half-equation-plan.ts';
import { reactingPairs } from './reacting-pairs.ts';

/** Oxidising agents whose half-equations are built by the rule alone, so that a class need not know them (common practice, no source). */
const BY_RULE: readonly SpeciesKey[] = ['PbO2', 'ClO3^-', 'BrO3^-', 'IO3^-', 'Ce^4+'];

/**
 * Half-equations that a stretch choice asks for besides: of the nitrogen and sulfur course and of batteries, whose reactions we do not
 * write about as if on the bench (common practice, no source).
 */
const ALONE: readonly (readonly [couple: string, isReduction: boolean])[] = [
  ['NO3^-/NO2', true],
  ['NO3^-/NO', true],
  ['NO3^-/NH4^+', true],
  ['SO2/S', true],
  ['S/H2S', false],
  ['HOCl/Cl^-', true],
  ['ClO3^-/Cl2', true],
  ['MnO4^-/MnO2@acid', true],
  ['MnO4^2-/MnO2@alkali', true],
  ['NiO(OH)/Ni(OH)2', true],
  ['NiO(OH)/Ni(OH)2', false],
  ['MnO2/MnO(OH)', true],
  ['[Al(OH)4]^-/Al', false],
];

const KNOWN = new WeakMap<Tables, Record<Level, readonly HonestPair[]>>();

/** Reactions whose half-equations are asked for. What is built by rule alone is in both, for at stretch more is asked about it. */
export function halfPairs(tables: Tables): Record<Level, readonly HonestPair[]> {
  let found = KNOWN.get(tables);
  if (!found) {
    const known = reactingPairs(tables, 'core');
    const reductants = new Set(known.map(({ reductant }) => reductant.id));
    const isByRule = ({ oxidant, reductant }: HonestPair) =>
      BY_RULE.includes(oxidant.oxidisedKey) && reductants.has(reductant.id);
    const all = reactingPairs(tables, 'stretch').filter(({ medium }) => medium !== 'neutral');
    const core = all.filter((pair) => pair.medium === 'acid' && (known.includes(pair) || isByRule(pair)));
    found = { core, stretch: all.filter((pair) => !known.includes(pair)) };
    KNOWN.set(tables, found);
  }
  return found;
}

/** Half-equations that can be asked for without a reaction, of the couples that the table has. */
export function halvesAlone(tables: Tables): readonly HalfPlan[] {
  return ALONE.flatMap(([id, isReduction]) => {
    const couple = tables.couples.find((each) => each.id === id);
    const plan = couple && planOf(couple, isReduction, couple.medium);
    return plan?.isBuilt && plan.change ? [plan] : [];
  });
}
