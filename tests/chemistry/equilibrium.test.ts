import { describe, expect, it } from 'vitest';
import type { SpeciesKey } from '../../src/chemistry/formula.ts';
import type { Amount, Mixture, Reactant } from '../../src/chemistry/mixture.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { react } from '../../src/chemistry/react.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { Rational } from '../../src/exact/rational.ts';
import { equilibrium, families } from './equilibrium.ts';
import { tables } from './tables.ts';

const LEAST = 0.3;
const TENTH = Rational.of(1, 10);
const restricted = new Set(tables.facts.restrictions.map((row) => row.couple));

/** Couples of dissolved species alone that are usual in acid both ways or one, and act with any partner. */
const dissolved = tables.couples.filter((couple) => {
  const species = [...couple.half.left, ...couple.half.right]
    .map((term) => term.formula)
    .filter((formula) => formula.units.length > 0);
  const solvent = ['H^+', 'H2O'];
  const main = species.filter((formula) => !solvent.includes(keyOf(formula)));
  const usual = couple.usualOxidant.includes('acid') || couple.usualReductant.includes('acid');
  return (
    usual &&
    !couple.calculationOnly &&
    !restricted.has(couple.id) &&
    main.length === 2 &&
    main.every((formula) => formula.state === 'aq')
  );
});
const allowed = new Set(dissolved.map((couple) => couple.id));

const reactant = (key: SpeciesKey, amount: Amount): Reactant => ({ formula: parseFormula(key), amount });
const run = (...reactants: Reactant[]): Mixture =>
  react({ reactants, medium: 'acid', values: 'stored' }, tables.couples, tables.facts);

/** True when nothing but the couples under test takes part, by a margin, and nothing is flagged. */
function isClear(mixture: Mixture): boolean {
  const volts = (pairs: readonly { emf: { value: Rational } }[]) => pairs.map((pair) => pair.emf.value.toNumber());
  return (
    mixture.steps.length > 0 &&
    mixture.loops.length === 0 &&
    mixture.notes.length === 0 &&
    mixture.held.every((each) => each.oxidant.id === 'H^+/H2') &&
    mixture.parallel.every((each) => each.kind === 'air' || each.kind === 'hydrogen') &&
    mixture.steps.every((step) => allowed.has(step.oxidant.id) && allowed.has(step.reductant.id)) &&
    volts(mixture.steps).every((emf) => emf >= LEAST) &&
    mixture.borderline.length === 0 &&
    backReactions(mixture).every((emf) => emf <= -LEAST)
  );
}

/** V, what every pair of species at the end would have among the couples under test. */
function backReactions(mixture: Mixture): number[] {
  const end = new Set(mixture.final.map(({ key }) => key));
  const oxidants = dissolved.filter((couple) => end.has(couple.oxidisedKey));
  const reductants = dissolved.filter((couple) => end.has(couple.reducedKey));
  return oxidants.flatMap((oxidant) =>
    reductants
      .filter((reductant) => reductant !== oxidant)
      .map((reductant) => oxidant.stored.value.minus(reductant.stored.value).toNumber()),
  );
}

/** 0.1 mol of one species with just as much of the other as it uses; undefined when the two do not make a clear case. */
function stoichiometric(key: SpeciesKey, other: SpeciesKey): { start: Map<SpeciesKey, number>; mixture: Mixture } | undefined {
  // A reagent that does not last by itself is no reagent.
  if (!run(reactant(other, TENTH)).final.some((each) => each.key === other)) return undefined;
  const trial = run(reactant(key, TENTH), reactant(other, 'excess'));
  if (!isClear(trial)) return undefined;
  const used = trial.net.get(other)?.net.negate();
  if (!used || used.sign() <= 0) return undefined;
  const mixture = run(reactant(key, TENTH), reactant(other, used));
  // Dissolved species are 0.1 mol dm⁻³ at most: the more plentiful one sets the volume.
  const volume = Math.max(1, used.toNumber() / 0.1);
  const start = new Map([
    [key, 0.1 / volume],
    [other, used.toNumber() / volume],
  ]);
  return isClear(mixture) ? { start, mixture } : undefined;
}

describe('the end of a mixture', () => {
  it('is the equilibrium of the same couples to better than 99 %, where every step has 0.30 V or more', () => {
    const species = [...new Set(dissolved.flatMap((couple) => [couple.oxidisedKey, couple.reducedKey]))];
    let cases = 0;
    let ladders = 0;
    let least = 1;
    for (const key of species) {
      for (const other of species) {
        const found = other === key ? undefined : stoichiometric(key, other);
        if (!found) continue;
        const { start, mixture } = found;
        const volume = 0.1 / start.get(key)!;
        const end = equilibrium(dissolved, start);
        for (const { key: product, amount } of mixture.final) {
          if (amount === 'excess') throw new Error('nothing is in excess here');
          const share = end.get(product)! / (amount.toNumber() / volume);
          least = Math.min(least, share);
          expect(share, `${product} from ${key} with ${other}`).toBeGreaterThan(0.99);
        }
        cases += 1;
        if (mixture.steps.length > 1) ladders += 1;
      }
    }
    console.log(`${cases} mixtures, ${ladders} of more than one step; least share of a predicted species ${least.toFixed(4)}`);
    expect(cases).toBeGreaterThan(100);
    expect(ladders).toBeGreaterThan(5);
  });

  it('is told wrong by an equilibrium with another potential, so that the check can fail', () => {
    const swapped = dissolved.map((couple) =>
      couple.id === 'Fe^3+/Fe^2+' ? { ...couple, stored: { value: Rational.of(2), places: 2 } } : couple,
    );
    const end = equilibrium(
      swapped,
      new Map([
        ['VO2^+', 0.1],
        ['Fe^2+', 0.1],
      ]),
    );
    expect(end.get('Fe^3+')! / 0.1).toBeLessThan(0.01);
  });

  it('is looked for in families that are trees', () => {
    expect(
      families(dissolved)
        .find((family) => family.some((member) => member.key === 'V^3+'))!
        .map((member) => member.key)
        .sort(),
    ).toEqual(['V^2+', 'V^3+', 'VO2^+', 'VO^2+'].sort());
  });
});
