import { describe, expect, it } from 'vitest';
import { isElectron } from '../../src/chemistry/formula-parts.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { TABLES } from './default-tables.ts';

const COUPLE_KEYS = new Set(TABLES.couples.flatMap(({ oxidisedKey, reducedKey }) => [oxidisedKey, reducedKey]));

describe('the species', () => {
  it('hold every species of every half-equation, in the state in which the half-equation has it', () => {
    for (const { id, half } of TABLES.couples) {
      for (const { formula } of [...half.left, ...half.right]) {
        if (isElectron(formula) || formula.state === undefined) continue;
        expect(TABLES.speciesOf(keyOf(formula)).formula.state, `${keyOf(formula)} in ${id}`).toBe(formula.state);
      }
    }
  });

  it('have a colour when a couple turns on them, save one that is never seen', () => {
    const without = [...COUPLE_KEYS].filter((key) => TABLES.speciesOf(key).colour === undefined);
    expect(without).toEqual(['Ti^2+']);
  });

  it.each([
    ['VO2^+', 'yellow'],
    ['VO^2+', 'blue'],
    ['V^3+', 'green'],
    ['V^2+', 'violet'],
    ['Cr2O7^2-', 'orange'],
    ['CrO4^2-', 'yellow'],
    ['Cr^3+', 'green'],
    ['Cr^2+', 'blue'],
    ['MnO4^-', 'purple'],
    ['MnO4^2-', 'dark green'],
    ['Fe^2+', 'pale green'],
    ['Cu^2+', 'blue'],
    ['I2', 'brown'],
  ])('give %s the colour %s', (key, colour) => {
    expect(TABLES.speciesOf(key).colour!.word).toBe(colour);
  });

  it('accept the violet of pure chromium(III) and the pale violet of pure iron(III)', () => {
    expect(TABLES.speciesOf('Cr^3+').colour!.accepted).toContain('violet');
    expect(TABLES.speciesOf('Fe^3+').colour!.accepted.join()).toContain('pale violet');
    expect(TABLES.speciesOf('Mn^2+').colour!.accepted).toContain('colourless');
  });

  it('never say clear for colourless', () => {
    const words = [...TABLES.species.values()].flatMap(({ colour }) => (colour ? [colour.word, ...colour.accepted] : []));
    expect(words.filter((word) => /\bclear\b/.test(word))).toEqual([]);
  });

  it('have names of their own in the IUPAC way, with the usual others beside', () => {
    expect(TABLES.speciesOf('MnO4^-')).toMatchObject({ name: 'manganate(VII) ion', otherNames: ['permanganate ion'] });
    expect(TABLES.speciesOf('C2O4^2-')).toMatchObject({ name: 'ethanedioate ion', otherNames: ['oxalate ion'] });
    expect(TABLES.speciesOf('S2O3^2-').name).toBe('thiosulfate ion');
    const names = [...TABLES.species.values()].map(({ name }) => name);
    expect(names.filter((name) => /sulph|aluminum|caesium ion \(/.test(name))).toEqual([]);
  });
});

describe('the salts', () => {
  it.each([
    'KMnO4',
    'K2Cr2O7',
    'FeSO4·7H2O',
    '(NH4)2Fe(SO4)2·6H2O',
    'Na2S2O3·5H2O',
    'NH4VO3',
    'VOSO4·5H2O',
    'KI',
    'SnCl2·2H2O',
    'Na2C2O4',
    'H2C2O4·2H2O',
    'CuSO4·5H2O',
  ])('hold %s', (formula) => {
    expect(TABLES.salts.map((salt) => keyOf(salt.formula))).toContain(formula);
  });

  it('name every water of crystallisation', () => {
    const words = [
      '',
      'mono',
      'di',
      'tri',
      'tetra',
      'penta',
      'hexa',
      'hepta',
      'octa',
      'nona',
      'deca',
      '',
      'dodeca',
      '',
      '',
      '',
      'hexadeca',
    ];
    for (const { formula, name } of TABLES.salts) {
      const water = /·(\d*)H2O$/.exec(keyOf(formula));
      if (water) expect(name, keyOf(formula)).toMatch(new RegExp(` ${words[Number(water[1] || 1)]}hydrate$`));
      else expect(name).not.toMatch(/hydrate$/);
    }
  });
});
