import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composition } from '../../src/chemistry/composition.ts';
import { confirm } from '../../src/chemistry/confirm.ts';
import type { Medium } from '../../src/chemistry/couple.ts';
import type { Condition } from '../../src/chemistry/facts.ts';
import type { Beaker, Mixture, Reactant } from '../../src/chemistry/mixture.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { react } from '../../src/chemistry/react.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { decimalText } from '../../src/exact/decimal.ts';
import { Fault } from '../../src/exact/fault.ts';
import { Rational } from '../../src/exact/rational.ts';
import { tables } from './tables.ts';

/** `VO2^+ + Zn=excess`: one mole of each unless an amount is given; `=1c` is a counter-ion. */
const reactantsOf = (text: string): Reactant[] =>
  text.split(' + ').map((part) => {
    const [formula, amount = '1'] = part.split('=');
    const plain = {
      formula: parseFormula(formula!),
      amount: amount === 'excess' ? ('excess' as const) : Rational.parse(amount.replace('c', '')),
    };
    return amount.endsWith('c') ? { ...plain, counterIon: true } : plain;
  });
const mix = (text: string, medium: Medium = 'acid', given: readonly Condition[] = []): Mixture =>
  react({ reactants: reactantsOf(text), medium, values: 'printed', given }, tables.couples, tables.facts);
const final = (mixture: Mixture) => mixture.final.map(({ key, amount }) => `${key}=${amount}`).join(' ');
const ladder = (mixture: Mixture) =>
  mixture.steps
    .map(({ from }) => from)
    .concat(mixture.steps.at(-1)?.to ?? [])
    .join(' ');
const pairs = (list: Mixture['stop']) =>
  list.map(({ oxidant, reductant, emf }) => `${oxidant.id} ${reductant.id} ${decimalText(emf)}`);

describe('the ladder of a mixture', () => {
  it.each([
    ['VO2^+ + Zn=excess', 'VO2^+ VO^2+ V^3+ V^2+', 'V^2+/V Zn^2+/Zn -0.43'],
    ['VO3^- + Zn=excess', 'VO2^+ VO^2+ V^3+ V^2+', 'V^2+/V Zn^2+/Zn -0.43'],
    ['Cr2O7^2- + Zn=excess', 'Cr2O7^2- Cr^3+ Cr^2+', 'Cr^2+/Cr Zn^2+/Zn -0.15'],
    ['VO2^+ + Sn=excess', 'VO2^+ VO^2+ V^3+', 'V^3+/V^2+ Sn^2+/Sn -0.12'],
    ['VO2^+ + Fe^2+=excess', 'VO2^+ VO^2+', 'VO^2+/V^3+ Fe^3+/Fe^2+ -0.43'],
    ['VO2^+ + I^-=excess', 'VO2^+ VO^2+', 'VO^2+/V^3+ I2/I^- -0.20'],
    ['Cr2O7^2- + Fe^2+=excess', 'Cr2O7^2- Cr^3+', 'Cr^3+/Cr^2+ Fe^3+/Fe^2+ -1.18'],
  ])('%s goes %s', (text, rungs, stop) => {
    const mixture = mix(text);
    expect(ladder(mixture)).toBe(rungs);
    expect(pairs(mixture.stop)).toContain(stop);
  });

  it('climbs with an oxidant in excess', () => {
    expect(ladder(mix('V^2+ + MnO4^-=excess'))).toBe('V^2+ V^3+ VO^2+ VO2^+');
    expect(mix('V^2+ + MnO4^-=excess').steps.every((step) => !step.reduction)).toBe(true);
  });

  it('stops between two rungs when the reductant runs out', () => {
    const mixture = mix('VO2^+ + Zn=3/4');
    expect(final(mixture)).toBe('VO^2+=1/2 Zn^2+=3/4 V^3+=1/2');
    expect(mixture.usedUp).toEqual(['VO2^+', 'Zn']);
  });

  it('is told apart from hydrogen, from air and from what is not observed', () => {
    const mixture = mix('VO2^+ + Zn=excess');
    expect(mixture.parallel.map((each) => [each.kind, each.reductant.id])).toEqual([
      ['hydrogen', 'Zn^2+/Zn'],
      ['air', 'V^3+/V^2+'],
    ]);
    expect(mixture.held.map((each) => [each.kind, each.oxidant.id, each.reductant.id])).toEqual([
      ['not-observed', 'H^+/H2', 'V^3+/V^2+'],
    ]);
  });
});

describe('usual products', () => {
  it.each<[string, Medium, Condition[], string[], string]>([
    ['MnO4^- + Fe^2+=5', 'acid', [], ['MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+'], 'Mn^2+=1 Fe^3+=5'],
    ['MnO4^- + H2O2=excess', 'acid', [], ['2MnO4^- + 6H^+ + 5H2O2 -> 2Mn^2+ + 8H2O + 5O2'], 'H2O2=excess Mn^2+=1 O2=5/2'],
    ['MnO4^- + C2O4^2-=5/2', 'acid', ['warm'], ['2MnO4^- + 16H^+ + 5C2O4^2- -> 2Mn^2+ + 8H2O + 10CO2'], 'Mn^2+=1 CO2=5'],
    ['MnO4^- + C2O4^2-=5/2', 'acid', [], [], 'MnO4^-=1 C2O4^2-=5/2'],
    ['Cu^2+ + I^-=excess', 'neutral', [], ['2Cu^2+ + 4I^- -> 2CuI + I2'], 'I^-=excess CuI=1 I2=1/2'],
    ['Cu^2+ + Fe^2+', 'neutral', [], [], 'Cu^2+=1 Fe^2+=1'],
    ['I2 + S2O3^2-=2', 'neutral', [], ['I2 + 2S2O3^2- -> 2I^- + S4O6^2-'], 'I^-=2 S4O6^2-=1'],
    ['IO3^- + I^-=5', 'acid', [], ['IO3^- + 6H^+ + 5I^- -> 3I2 + 3H2O'], 'I2=3'],
    ['Cl2 + I^-=2', 'acid', [], ['Cl2 + 2I^- -> 2Cl^- + I2'], 'Cl^-=2 I2=1'],
    ['Fe^3+ + Zn=excess', 'acid', [], ['2Fe^3+ + Zn -> 2Fe^2+ + Zn^2+'], 'Zn=excess Fe^2+=1 Zn^2+=1/2'],
    ['Cu^+', 'acid', [], ['2Cu^+ -> Cu + Cu^2+'], 'Cu=1/2 Cu^2+=1/2'],
    ['MnO4^2-', 'acid', [], ['3MnO4^2- + 4H^+ -> MnO2 + 2H2O + 2MnO4^-'], 'MnO2=1/3 MnO4^-=2/3'],
    ['Cl2', 'alkali', [], ['Cl2 + 2OH^- -> Cl^- + ClO^- + H2O'], 'Cl^-=1 ClO^-=1'],
    ['H2O2', 'acid', ['catalyst'], ['2H2O2 -> 2H2O + O2'], 'O2=1/2'],
  ])('%s in %s, given %j', (text, medium, given, equations, end) => {
    const mixture = mix(text, medium, given);
    expect(mixture.steps.map((step) => writeEquation(step.combined.equation))).toEqual(equations);
    expect(final(mixture)).toBe(end);
  });

  it('hold back what needs a condition, and say which', () => {
    const [held] = mix('MnO4^- + C2O4^2-').held;
    expect(held).toMatchObject({ kind: 'conditional', needs: ['warm', 'catalyst'] });
  });
  it('never let manganate(VII) meet its own manganese(II)', () => {
    const mixture = mix('MnO4^- + Fe^2+=2');
    expect(final(mixture)).toBe('MnO4^-=3/5 Mn^2+=2/5 Fe^3+=2');
    expect(mixture.held.map((each) => each.kind)).toEqual(['not-observed']);
  });
  it('tell chloride and manganate(VII) apart as a parallel reaction', () => {
    const mixture = mix('MnO4^- + Fe^2+=5 + Cl^-=5c');
    expect(mixture.parallel.map((each) => each.kind)).toEqual(['counter-ion']);
    expect(final(mixture)).toContain('Cl^-=5');
  });
  it('leave differences below 0.10 V as borderline', () => {
    const mixture = mix('VO2^+ + Cu=excess');
    expect(ladder(mixture)).toBe('VO2^+ VO^2+');
    expect(mixture.stop).toEqual([]);
    const near = react(
      { reactants: reactantsOf('VO2^+ + Cu=excess'), medium: 'acid', values: 'stored' },
      tables.couples,
      tables.facts,
    );
    expect(pairs(near.borderline)).toEqual(['VO^2+/V^3+ Cu^2+/Cu 0.00']);
  });
});

describe('acid and alkali', () => {
  it('can be what limits a step, and nothing follows it', () => {
    const mixture = mix('MnO4^- + Fe^2+=5 + H^+=4');
    expect(final(mixture)).toBe('MnO4^-=1/2 Fe^2+=5/2 Mn^2+=1/2 Fe^3+=5/2');
    expect(mixture.notes.map((note) => note.kind)).toEqual(['medium-used-up']);
  });
  it('have no standard concentration in a neutral mixture: potentials that need one tell no stop there', () => {
    expect(mix('MnO4^- + Fe^2+=excess', 'neutral').stop).toEqual([]);
    expect(pairs(mix('Zn^2+ + Cu=excess', 'neutral').stop)).toEqual(['Zn^2+/Zn Cu^2+/Cu -1.10']);
  });
  it('are not made up for in a neutral mixture', () => {
    expect(mix('Cr2O7^2- + Fe^2+=6', 'neutral').steps).toEqual([]);
    expect(mix('Cl2 + S2O3^2-', 'neutral').notes.map((note) => note.kind)).toEqual(['medium-changed']);
  });
  it('decide how a species stands', () => {
    const mixture = mix('Cr^3+ + H2O2=excess', 'strong-alkali');
    expect(mixture.steps.map((step) => writeEquation(step.combined.equation))).toEqual([
      '3HO2^- + 2Cr(OH)3 + OH^- -> 2CrO4^2- + 5H2O',
    ]);
    expect(mixture.notes.every((note) => note.kind === 'speciation')).toBe(true);
  });
});

describe('a catalyst', () => {
  it('is told once, as a loop with its sum', () => {
    const mixture = mix('S2O8^2- + I^-=excess + Fe^2+=1/100');
    expect(mixture.steps.map((step) => writeEquation(step.combined.equation))).toEqual([
      'S2O8^2- + 2Fe^2+ -> 2SO4^2- + 2Fe^3+',
      '2Fe^3+ + 2I^- -> 2Fe^2+ + I2',
    ]);
    expect(mixture.loops.map(({ sum, carriers }) => [writeEquation(sum), ...carriers])).toEqual([
      ['S2O8^2- + 2I^- -> 2SO4^2- + I2', 'Fe^2+', 'Fe^3+'],
    ]);
    expect(final(mixture)).toBe('I^-=excess SO4^2-=2 Fe^2+=1/100 I2=1');
    expect(mixture.steps.map((step) => step.extent.toString())).toEqual(['1', '1']);
  });
  it('may be put in as iron(III)', () => {
    const mixture = mix('S2O8^2- + I^-=2 + Fe^3+=1/100');
    expect(final(mixture)).toContain('I2=1');
    expect(mixture.loops.map(({ sum }) => writeEquation(sum))).toEqual(['S2O8^2- + 2I^- -> 2SO4^2- + I2']);
  });
});

describe('a beaker', () => {
  it('needs something in it, in amounts above zero, not all in excess', () => {
    const code = (text: string) => {
      try {
        mix(text);
      } catch (error) {
        return error instanceof Fault ? error.code : 'other';
      }
      return 'none';
    };
    expect(code('VO2^+=0 + Zn')).toBe('bad-amount');
    expect(code('CrO4^2- + Zn + H^+=1/2')).toBe('too-little-medium');
    expect(code('OH^- + Zn')).toBe('wrong-medium');
    expect(code('VO2^+=excess + Zn=excess')).toBe('nothing-limits');
    expect(() => react({ reactants: [], medium: 'acid', values: 'stored' }, tables.couples, tables.facts)).toThrow(
      'at least one reactant',
    );
  });
  it('tells ions that precipitate', () => {
    expect(mix('Ag^+ + Cl^-=1c', 'neutral').notes.map((note) => note.kind)).toEqual(['precipitates']);
  });

  const species = [...new Set(tables.couples.flatMap((couple) => [couple.oxidisedKey, couple.reducedKey]))];
  const amount = fc.oneof(
    { arbitrary: fc.constant('excess' as const), weight: 1 },
    {
      arbitrary: fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 })).map(([n, d]) => Rational.of(n, d)),
      weight: 4,
    },
  );
  const oxidants = tables.couples.filter((couple) => couple.usualOxidant.length > 0).map((couple) => couple.oxidisedKey);
  const reductants = tables.couples.filter((couple) => couple.usualReductant.length > 0).map((couple) => couple.reducedKey);
  const reactantOf = (keys: readonly string[]) =>
    fc
      .record({ key: fc.constantFrom(...keys), amount, counterIon: fc.constantFrom(false, false, false, true) })
      .map(({ key, amount: much, counterIon }) => ({ formula: parseFormula(key), amount: much, counterIon }));
  const beakers: fc.Arbitrary<Beaker> = fc.record({
    reactants: fc
      .tuple(reactantOf(oxidants), reactantOf(reductants), fc.array(reactantOf(species), { maxLength: 3 }))
      .map(([oxidant, reductant, others]) => [oxidant, reductant, ...others]),
    medium: fc.constantFrom<Medium>('acid', 'neutral', 'alkali', 'strong-alkali'),
    values: fc.constantFrom('stored' as const, 'printed' as const),
    given: fc.subarray<Condition>(['warm', 'time', 'catalyst', 'oxide-removed', 'excess-oxidant']),
  });

  it('conserves every element and charge exactly, takes only steps of 0.10 V or more, and comes to rest', () => {
    let steps = 0;
    fc.assert(
      fc.property(beakers, (beaker) => {
        let mixture: Mixture;
        try {
          mixture = react(beaker, tables.couples, tables.facts);
        } catch (error) {
          if (error instanceof Fault && ['nothing-limits', 'wrong-medium', 'too-little-medium'].includes(error.code)) return;
          throw error;
        }
        steps += mixture.steps.length;
        const sums = new Map<string, Rational>();
        for (const { formula, net } of mixture.net.values()) {
          for (const [component, count] of composition(formula)) {
            sums.set(component, (sums.get(component) ?? Rational.zero).plus(net.times(Rational.of(count))));
          }
        }
        for (const [component, sum] of sums) expect([component, sum.toString()]).toEqual([component, '0']);
        for (const { amount: left } of mixture.final) expect(left === 'excess' || left.sign() > 0).toBe(true);
        for (const step of mixture.steps) {
          expect(step.emf.value.compare(Rational.of(1, 10))).toBeGreaterThanOrEqual(0);
          expect(step.extent.sign()).toBe(1);
          expect(confirm(step.combined.equation, step.oxidant.half, step.reductant.half).agrees).toBe(true);
        }
        for (const { key, amount: left } of mixture.final) {
          const given = beaker.reactants.filter((each) => keyOf(each.formula) === key);
          if (left === 'excess' || mixture.notes.some((note) => note.kind === 'speciation')) continue;
          const start = given.reduce((sum, each) => sum.plus(each.amount as Rational), Rational.zero);
          expect(left.toString()).toBe(start.plus(mixture.net.get(key)?.net ?? Rational.zero).toString());
        }
      }),
      { numRuns: 3000 },
    );
    expect(steps).toBeGreaterThan(500);
  });

  it('adds up hydroxide that comes from two bottles', () => {
    const given = (formula: string, amount: string): Reactant => ({
      formula: parseFormula(formula),
      amount: Rational.parse(amount),
    });
    const reactants = [given('OH^-', '1'), given('Cl2', '1'), given('OH^-', '1/2')];
    const { net } = react({ reactants, medium: 'alkali', values: 'stored' }, tables.couples, tables.facts);
    // Cl₂ + 2OH⁻ → Cl⁻ + ClO⁻ + H₂O: 1.5 mol of hydroxide take 0.75 mol of chlorine
    expect(net.get('Cl2')!.net.toString()).toBe('-3/4');
  });

  it('gives the same answer whatever the order of its reactants', () => {
    fc.assert(
      fc.property(beakers, (beaker) => {
        const answer = (reactants: readonly Reactant[]) => {
          try {
            const mixture = react({ ...beaker, reactants }, tables.couples, tables.facts);
            return mixture.final.map(({ key, amount: left }) => `${key}=${left}`).sort();
          } catch (error) {
            if (error instanceof Fault) return error.code;
            throw error;
          }
        };
        expect(answer(beaker.reactants.toReversed())).toEqual(answer(beaker.reactants));
      }),
      { numRuns: 1000 },
    );
  });
});
