import { describe, expect, it } from 'vitest';
import { composition } from '../../src/chemistry/composition.ts';
import { averageOxidationNumber } from '../../src/chemistry/oxidation-numbers.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { Rational } from '../../src/exact/rational.ts';
import { TABLES } from './default-tables.ts';

const { pairs, restrictions, bystanders, speciations } = TABLES.facts;
const pair = (oxidant: string, reductant: string) =>
  pairs.find((fact) => fact.oxidant === oxidant && fact.reductant === reductant);
const banned = (one: string, other: string, where: string) =>
  TABLES.bans.some((ban) => {
    const holds = (list: readonly string[], key: string) => list.includes(key) || list.includes('*');
    return (
      ban.where === where &&
      ((holds(ban.first, one) && holds(ban.second, other)) || (holds(ban.first, other) && holds(ban.second, one)))
    );
  });

describe('the pair facts', () => {
  it.each([
    ['MnO4^-', 'C2O4^2-', 'conditional', 'warm'],
    ['S2O8^2-', 'I^-', 'conditional', 'catalyst'],
    ['BrO3^-', 'Br^-', 'conditional', 'time'],
    ['*', 'Al', 'conditional', 'oxide-removed'],
    ['H2O2', 'H2O2', 'conditional', 'catalyst'],
    ['Cr^3+', 'NH3', 'conditional', 'warm'],
  ])('make %s with %s %s: %s', (oxidant, reductant, verdict, needs) => {
    expect(pair(oxidant, reductant)).toMatchObject({ verdict, needs: expect.arrayContaining([needs]) });
  });

  it.each([
    ['*', 'Mn^2+'],
    ['*', 'Cr^3+'],
    ['H^+', 'V^2+'],
    ['H^+', 'Cr^2+'],
    ['NO3^-', '*'],
    ['Fe^2+', 'Zn'],
  ])('say that %s with %s is not observed in acid', (oxidant, reductant) => {
    expect(pair(oxidant, reductant)).toMatchObject({ verdict: 'not-observed', media: ['acid'] });
  });

  it('keep apart cations and the anions that precipitate them', () => {
    for (const [cation, anion] of [
      ['Ag^+', 'Cl^-'],
      ['Pb^2+', 'SO4^2-'],
      ['Ba^2+', 'SO4^2-'],
      ['Cu^2+', '[Fe(CN)6]^4-'],
      ['Ag^+', 'I^-'],
    ] as const) {
      expect(pair(cation, anion)?.verdict, `${cation} with ${anion}`).toBe('precipitates');
    }
  });

  it('let hydrogen peroxide react by whitelist only', () => {
    const partners = (couple: string) => restrictions.filter((entry) => entry.couple === couple).map((entry) => entry.partners);
    expect(partners('O2/H2O2')[0]).toEqual(['MnO4^-', 'Cr2O7^2-', 'Ce^4+', 'MnO2']);
    expect(partners('H2O2/H2O')[0]).toEqual(['Fe^2+', 'I^-', 'SO2', 'Sn^2+', 'Ti^3+']);
  });

  it('take thiosulfate to tetrathionate with iodine only', () => {
    expect(restrictions.find((entry) => entry.couple === 'S4O6^2-/S2O3^2-')!.partners).toEqual(['I2']);
  });

  it('keep the solvent, the air and counter-ions out of the ordering', () => {
    const keys = bystanders.map(({ species, as }) => `${species} ${as}`);
    for (const key of [
      'H^+ oxidant',
      'H2 reductant',
      'O2 oxidant',
      'H2O oxidant',
      'SO4^2- oxidant',
      'NO3^- oxidant',
      'Cl^- reductant',
    ])
      expect(keys).toContain(key);
    expect(bystanders.find(({ species }) => species === 'Cl^-')!.unlessNamed).toBe(true);
    expect(bystanders.find(({ species }) => species === 'H^+')!.unlessNamed).toBe(false);
  });

  it('name a source or say common practice', () => {
    const sources = [...pairs, ...restrictions, ...bystanders, ...speciations, ...TABLES.bans].map(({ source }) => source);
    expect(sources.every((source) => source.length > 10)).toBe(true);
  });
});

describe('speciation', () => {
  const shared = ['H', 'O'];
  it.each(speciations.map((fact) => [fact.species, fact.medium, fact] as const))(
    'of %s in %s is no redox step',
    (_species, _medium, fact) => {
      const [before, after] = [parseFormula(fact.species), parseFormula(fact.becomes)];
      for (const [component, count] of composition(before)) {
        if (component === 'charge' || shared.includes(component)) continue;
        expect(Rational.of(count).equals(fact.count.times(Rational.of(composition(after).get(component) ?? 0))), component).toBe(
          true,
        );
        expect(averageOxidationNumber(before, component)!.equals(averageOxidationNumber(after, component)!), component).toBe(
          true,
        );
      }
    },
  );

  it('turns two chromate ions into one dichromate ion in acid', () => {
    expect(speciations.find(({ species, medium }) => species === 'CrO4^2-' && medium === 'acid')).toMatchObject({
      becomes: 'Cr2O7^2-',
      count: Rational.of(1, 2),
    });
  });
});

describe('the bans', () => {
  it('keep nitric acid, and hydrochloric acid with manganate(VII), out of questions', () => {
    expect(banned('HNO3', 'Zn', 'reagents')).toBe(true);
    expect(banned('Cl^-', 'MnO4^-', 'reagents')).toBe(true);
    expect(banned('Sn^2+', 'MnO4^-', 'reagents')).toBe(true);
    expect(banned('NO3^-', 'Fe^2+', 'reagents')).toBe(true);
    expect(banned('KCl', 'Ag^+', 'salt bridge')).toBe(true);
  });

  it('keep chloride from every oxidant in acid that is stronger than chlorine, dilute peroxide excepted', () => {
    const chlorine = TABLES.couple('Cl2/Cl^-').printed.value;
    const stronger = TABLES.couples.filter(
      (couple) => couple.usualOxidant.includes('acid') && couple.printed.value.compare(chlorine) > 0,
    );
    const excepted = ['H2O2', 'Au^3+'];
    const missing = stronger
      .map((couple) => couple.oxidisedKey)
      .filter((key) => !excepted.includes(key) && !banned('Cl^-', key, 'reagents'));
    expect(missing).toEqual([]);
  });

  it.each([
    ['MnO4^-', 'H2SO4'],
    ['ClO^-', 'HCl'],
    ['ClO^-', 'NH3'],
    ['I2', 'NH3'],
    ['ClO3^-', 'H2SO4'],
    ['Mg', 'KClO3'],
    ['S2O3^2-', 'HCl'],
    ['[Fe(CN)6]^4-', 'H2SO4'],
  ])('keep %s and %s out of a procedure', (one, other) => {
    expect(banned(one, other, 'procedure')).toBe(true);
  });
});

describe('the misconceptions', () => {
  it('are all there, with feedback that is short and kind', () => {
    expect(TABLES.misconceptions.size).toBeGreaterThanOrEqual(73);
    for (const id of ['ON-ION-CHARGE', 'EP-ADD', 'EP-MULTIPLIED', 'TI-RATIO-INVERTED', 'LD-GOES-TOO-FAR'])
      expect(TABLES.misconceptions.has(id), id).toBe(true);
    for (const { id, feedback, evidence } of TABLES.misconceptions.values()) {
      expect(feedback.split(/\s+/).length, id).toBeLessThanOrEqual(30);
      expect(feedback, id).not.toMatch(/\b(wrongly|stupid|careless|obviously|simply|of course)\b/i);
      expect(evidence.length, id).toBeGreaterThan(0);
    }
  });
});
