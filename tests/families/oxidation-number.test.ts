import { describe, expect, it } from 'vitest';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { asChoice } from '../../src/questions/choice.ts';
import { type NumberDraw, oxidationNumber } from '../../src/questions/families/oxidation-number.ts';
import { buildOxidationNumber } from '../../src/questions/families/oxidation-number-build.ts';
import { reactionOf } from '../../src/questions/families/oxidation-number-reaction.ts';
import { wantedIn, wantedOf } from '../../src/questions/families/oxidation-number-species.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { numberFrom } from '../../src/questions/oxidation-account.ts';
import { rowsOf } from '../../src/questions/rows.ts';
import { showNumber } from '../../src/questions/show-value.ts';
import { tables, wording } from '../support/data.ts';
import { answerAt, asking, checked, marked, plainText, wordsOf } from './reading.ts';

const words = wordsOf('oxidation-number');
const wanted = (formula: string, element: string) => wantedOf(parseFormula(formula), element)!;
const reaction = (oxidant: string, reductant: string) =>
  reactionOf({ oxidant: tables.couple(oxidant), reductant: tables.couple(reductant), medium: 'acid' })!;

const core: NumberDraw = {
  wanted: [wanted('MnO2', 'Mn'), wanted('IO3^-', 'I'), wanted('Cr2O7^2-', 'Cr')],
  reaction: reaction('VO2^+/VO^2+', 'Fe^3+/Fe^2+'),
};
const stretch: NumberDraw = {
  wanted: [wanted('[Fe(CN)6]^4-', 'Fe'), wanted('S2O8^2-', 'S'), wanted('Fe3O4', 'Fe')],
  reaction: reaction('Cr2O7^2-/Cr^3+', 'Sn^4+/Sn^2+'),
};

describe('marking oxidation numbers at core level', () => {
  const item = checked(buildOxidationNumber(core, tables, asking('core'), words));

  it('gives the answers', () => {
    expect(['number-1', 'number-2', 'number-3'].map((id) => answerAt(item, id))).toEqual(['+4', '+5', '+6']);
    expect([answerAt(item, 'reduced'), answerAt(item, 'change'), answerAt(item, 'agent')]).toEqual(['V', '+5, +4', 'Fe^2+']);
  });

  it('takes one mark for one wrong species', () => {
    // 2Cr − 14 = −2, so both chromium together are +12; with the sum at zero one is +7; with + 2 for the charge +8; one oxygen: 0.
    expect(marked(item, 'ON-NOT-PER-ATOM')).toEqual(['a: +12; 2/3', 'b: 2/2', 'c: 1/1']);
    expect(marked(item, 'ON-SUM-ZERO', 'number-3')[0]).toBe('a: +7; 2/3');
    expect(marked(item, 'ON-ION-CHARGE', 'number-3')[0]).toBe('a: −2; 2/3');
    expect(marked(item, 'ON-CHARGE-SIGN', 'number-3')[0]).toBe('a: +8; 2/3');
    expect(marked(item, 'ON-COUNT-IGNORED', 'number-3')[0]).toBe('a: 0; 2/3');
    expect(marked(item, 'ON-SUM-ZERO', 'number-2')[0]).toBe('a: +6; 2/3');
  });

  it('keeps the mark for the element when its number is wrong', () => {
    // the charges of VO2^+ and VO^2+, taken for the numbers of vanadium: one who does so does it twice
    expect(marked(item, 'ON-ION-CHARGE', 'change')).toEqual(['a: 3/3', 'b: +1, +2; 1/2', 'c: 1/1']);
    expect(marked(item, 'RX-AGENT-SWAP')).toEqual(['a: 3/3', 'b: 2/2', 'c: VO2^+; 0/1']);
  });
});

describe('marking oxidation numbers at stretch level', () => {
  const item = checked(buildOxidationNumber(stretch, tables, asking('stretch'), words));

  it('gives the answers, an average as a fraction with its sign', () => {
    expect(['number-1', 'number-2', 'number-3'].map((id) => answerAt(item, id))).toEqual(['+2', '+6', '+8/3']);
    expect(answerAt(item, 'electrons')).toBe('6');
  });

  it('knows what the usual wrong thoughts give', () => {
    expect(marked(item, 'ON-COMPLEX-CHARGE')[0]).toBe('a: −4; 2/3');
    // all eight oxygen −2: 2S − 16 = −2
    expect(marked(item, 'ON-PEROXIDE-STATE')[0]).toBe('a: +7; 2/3');
    expect(marked(item, 'ON-ROUND-FRACTION')[0]).toBe('a: +3; 2/3');
  });

  it('lets a wrong number carry on to the electrons', () => {
    // chromium taken as +7 falls to +3: 4 for one, 8 for both; the change is wrong, the rest is right
    expect(marked(item, 'ON-SUM-ZERO', 'before')[2]).toBe('c: 8; 1/2');
    expect(marked(item, 'HE-ELECTRONS-PER-ATOM')[2]).toBe('c: 3; 1/2');
    expect(marked(item, 'RX-COEFFICIENT-ELECTRONS')[2]).toBe('c: 1; 0/2');
  });
});

describe('what a formula does not tell', () => {
  const asked = (level: 'core' | 'stretch', third: readonly [string, string], answering: 'written' | 'choice') =>
    buildOxidationNumber(
      { ...stretch, wanted: [stretch.wanted[0], stretch.wanted[1], wanted(...third)] },
      tables,
      asking(level, answering),
      words,
    );

  it('calls a number an average wherever atoms differ, though it be whole', () => {
    for (const each of [
      ['Fe3O4', 'Fe'],
      ['S2O3^2-', 'S'],
      ['S4O6^2-', 'S'],
    ] as const) {
      const { item, choice } = asked('stretch', each, 'choice');
      expect(plainText(choice!.prompt)).toMatch(/average oxidation number/);
      expect(plainText(asked('stretch', each, 'written').item.parts[0]!.space)).toContain('(average)');
      expect(item.parts.length).toBeGreaterThan(0);
    }
    expect(plainText(asked('stretch', ['Cr2O7^2-', 'Cr'], 'choice').choice!.prompt)).not.toMatch(/average/);
  });

  it('takes the two states of iron for the average too', () => {
    const [, , third] = asked('stretch', ['Fe3O4', 'Fe'], 'written').item.parts[0]!.points;
    expect(third!.accept.map(plainText)).toContain('+2 (one atom) and +3 (two atoms)');
  });

  it.each([
    ['[Cu(C10H12N2O8)]^2-', 'Cu', 'edta'],
    ['[Cr(C2O4)3]^3-', 'Cr', 'ethanedioate'],
    ['[Fe(SCN)(H2O)5]^2+', 'Fe', 'thiocyanate'],
  ])('names the ligand of %s', (formula, element, name) => {
    expect(plainText(asked('stretch', [formula, element], 'choice').item.stem)).toContain(name);
  });
});

it('takes the charge of the complex ion, not of its salt', () => {
  const salt = { ...stretch, wanted: [wanted('K3[Fe(CN)6]', 'Fe'), stretch.wanted[1], wanted('Mn3O4', 'Mn')] as const };
  const item = checked(buildOxidationNumber(salt, tables, asking('stretch'), words));
  expect(marked(item, 'ON-COMPLEX-CHARGE')[0]).toBe('a: −3; 2/3');
});

it('goes wrong in the same way on both sides of a reaction, or in none', () => {
  // from [Fe(CN)6]3- to [Fe(CN)6]4-: with the charge wrongly signed +9 and +10, with the sum at zero +6 and +6, which do not fall;
  // with the charge of the complex −3 and −4, with one cyanide −2 and −3: one electron, as it should be. 4 and 7 are nobody's figures
  const cyanide = { ...stretch, wanted: [wanted('[CoCl4]^2-', 'Co'), stretch.wanted[1], wanted('Mn3O4', 'Mn')] as const };
  const along = reactionOf({
    oxidant: tables.couple('[Fe(CN)6]^3-/[Fe(CN)6]^4-'),
    reductant: tables.couple('CrO4^2-/Cr(OH)3'),
    medium: 'alkali',
  })!;
  const item = checked(buildOxidationNumber({ ...cyanide, reaction: along }, tables, asking('stretch'), words));
  expect(rowsOf(item).filter(({ at }) => ['before', 'after', 'change', 'per-atom'].includes(at))).toEqual([]);
});

it('blames no product whose number is right all the same', () => {
  // MnO4-: with the sum at zero 0 + 8 = +8, and MnO2, which is neutral, is +4 for everybody: 4 for each of two atoms, 8 electrons
  const along = reactionOf({
    oxidant: tables.couple('MnO4^-/MnO2@alkali'),
    reductant: tables.couple('SO4^2-/SO3^2-'),
    medium: 'alkali',
  })!;
  const item = checked(buildOxidationNumber({ ...stretch, reaction: along }, tables, asking('stretch'), words));
  expect(marked(item, 'ON-SUM-ZERO', 'per-atom')[2]).toBe('c: 8; 1/2');
  const told = item.slips.filter(({ at }) => at === 'per-atom').map(({ happened }) => happened);
  expect(told.length).toBeGreaterThan(0);
  for (const each of told) expect(each.filter(({ kind }) => kind === 'formula')).toHaveLength(1);
});

it('multiplies no total for all atoms by the atoms again', () => {
  const item = checked(buildOxidationNumber(stretch, tables, asking('stretch'), words));
  // both chromium of Cr2O7^2- together are +12: 18 electrons would be nobody's figure
  expect(marked(item, 'ON-NOT-PER-ATOM', 'before')).toEqual([]);
});

it('says what a bare number of electrons earns', () => {
  const [change, electrons] = buildOxidationNumber(stretch, tables, asking('stretch'), words).item.parts[2]!.points;
  expect(change!.refuse.map(plainText)).toEqual(['a right number of electrons without oxidation numbers']);
  expect(electrons!.accept.map(plainText)).toContain('the right number alone');
});

it('says of a salt that its ion is asked as well', () => {
  const salt = { ...stretch, wanted: [stretch.wanted[0], wanted('K2S2O8', 'S'), wanted('Mn3O4', 'Mn')] as const };
  const { asks } = buildOxidationNumber(salt, tables, asking('stretch'), words).item;
  expect(asks).toContain('on:S@K2S2O8');
  expect(asks).toContain('on:S@S2O8^2-');
});

it('offers the wrong answers as options, in ascending order', () => {
  const { item, choice } = buildOxidationNumber(core, tables, asking('core', 'choice'), words);
  const options = asChoice(item, choice!)!.parts[0]!.options!;
  const shown = options.map(({ value }) => (value.kind === 'number' ? showNumber(value.value, 'exact', true) : ''));
  expect(shown).toEqual(['−2', '+6', '+7', '+12']);
});

it('asks at stretch for no number that a core choice asks for', () => {
  const asked = (level: 'core' | 'stretch') =>
    Array.from({ length: 80 }, (_, at) => {
      const slot = slotOf(`choice ${at}`, 'oxidation-number', 's1', 0);
      return makeQuestion(oxidationNumber, slot, asking(level, 'choice'), tables, wording).asks[0]!;
    });
  const [core, stretch] = [new Set(asked('core')), asked('stretch')];
  expect(stretch.filter((fact) => core.has(fact))).toEqual([]);
  expect(new Set(stretch).size).toBeGreaterThan(14);
});

// Worked by hand: charge of the whole, less charges of ligands and ions.
it.each([
  ['[Co(NH3)5Cl]^2+', 'Co', '3'],
  ['[Co(NH3)3Cl3]', 'Co', '3'],
  ['[Cr(H2O)4Cl2]^+', 'Cr', '3'],
  ['[Pt(NH3)2Cl4]', 'Pt', '4'],
  ['[Ag(S2O3)2]^3-', 'Ag', '1'],
  ['[Co(C2O4)3]^3-', 'Co', '3'],
  ['K4[Fe(CN)6]', 'Fe', '2'],
  ['K2[PtCl6]', 'Pt', '4'],
  ['K3[Cr(C2O4)3]', 'Cr', '3'],
  ['Na3[Co(NO2)6]', 'Co', '3'],
  ['Na2S2O3', 'S', '2'],
  ['Na2S4O6', 'S', '5/2'],
  ['Na2S2O8', 'S', '6'],
])('knows %s', (formula, element, number) => {
  const all = wantedIn(tables);
  const found = all.find((each) => keyOf(each.formula) === formula && each.element === element);
  expect(String(found && numberFrom(found.account))).toBe(number);
});
