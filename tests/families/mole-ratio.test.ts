import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { asChoice } from '../../src/questions/choice.ts';
import { buildRatio } from '../../src/questions/families/mole-ratio-build.ts';
import type { RatioDraw } from '../../src/questions/families/mole-ratio-draw.ts';
import { mayStandTogether } from '../../src/questions/families/mole-ratio-mixture.ts';
import { substancesFor } from '../../src/questions/families/mole-ratio-substance.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import { shorterFigures } from '../../src/questions/shorter-figures.ts';
import { tables } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('mole-ratio');
const substance = (key: string, name: string) => substancesFor(key, tables).find(({ salt }) => salt.name === name)!;
const caution = { substance: 's', caution: 'c', signal: 'none', statements: [], source: 's', fromMemory: false } as const;

/** 0.350 g of KMnO₄ and the mass of FeSO₄·7H₂O that it oxidises in acid. */
const MASSES: RatioDraw = {
  oxidant: tables.couple('MnO4^-/Mn^2+'),
  reductant: tables.couple('Fe^3+/Fe^2+'),
  medium: 'acid',
  known: { ...substance('MnO4^-', 'potassium manganate(VII)'), measure: 'mass' },
  found: { ...substance('Fe^2+', 'iron(II) sulfate heptahydrate'), measure: 'mass' },
  mass: parseDecimal('0.350'),
  told: 'changes',
  choosesRatio: false,
  cautions: [caution],
};

// By hand: M(KMnO₄) = 39.1 + 54.9 + 64.0 = 158.0; 0.350 / 158.0 = 2.215 × 10⁻³; × 5 = 0.01108; M(FeSO₄·7H₂O) = 277.9; 3.08 g.
// Ratio 1 : 1 gives 0.616 g, upside down 0.123 g; the coefficients as masses 1.75 g; without water M = 151.9, so 1.68 g.

describe('a mass of a hydrated salt that reacts with a mass of another', () => {
  const item = checked(buildRatio(MASSES, tables, asking('stretch'), words));

  it('goes through equation, ratio, amount and molar masses', () => {
    expect(answerAt(item, 'equation')).toBe('MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+');
    expect(answerAt(item, 'ratio')).toBe('5 : 1');
    expect(answerAt(item, 'molar-known')).toBe('158.0 g mol^-1');
    expect(answerAt(item, 'molar-found')).toBe('277.9 g mol^-1');
    expect(answerAt(item, 'asked')).toBe('3.08 g');
  });

  it.each([
    ['TI-RATIO-ONE', ['a: 2/2', 'b: 1 : 1; 0/1', 'c: 2/2', 'd: 0.616 g; 3/3']],
    ['TI-RATIO-INVERTED', ['a: 2/2', 'b: 1 : 5; 0/1', 'c: 2/2', 'd: 0.123 g; 3/3']],
    ['TI-MASS-RATIO', ['a: 2/2', 'b: 1/1', 'c: 2/2', 'd: 1.75 g; 0/3']],
    ['TI-ANHYDROUS-M', ['a: 2/2', 'b: 1/1', 'c: 2/2', 'd: 1.68 g; 2/3']],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });
});

/** 25.0 cm³ of 0.0200 mol dm⁻³ dichromate(VI) and the volume of 0.120 mol dm⁻³ iron(II) that it oxidises. */
const VOLUMES: RatioDraw = {
  ...MASSES,
  oxidant: tables.couple('Cr2O7^2-/Cr^3+'),
  known: { ...substance('Cr2O7^2-', 'potassium dichromate(VI)'), measure: 'solution' },
  found: { ...substance('Fe^2+', 'iron(II) sulfate heptahydrate'), measure: 'solution' },
  concentration: parseDecimal('0.0200'),
  volume: parseDecimal('25.0'),
  foundConcentration: parseDecimal('0.120'),
  told: 'half-equations',
};
const { mass: _, ...SOLUTIONS } = VOLUMES;

// By hand: 0.0200 × 25.0 / 1000 = 5.00 × 10⁻⁴; × 6 = 3.00 × 10⁻³; / 0.120 = 25.0 cm³. Ratio 1 : 1 gives 4.17 cm³, upside down 0.694 cm³.

describe('a volume of a solution that reacts with a volume of another', () => {
  const built = buildRatio(SOLUTIONS, tables, asking('core'), words);
  const item = checked(built);

  it('is found through the ratio', () => {
    expect(answerAt(item, 'ratio')).toBe('6 : 1');
    expect(answerAt(item, 'amount')).toBe('5.000 × 10^-4 mol');
    expect(answerAt(item, 'asked')).toBe('25.0 cm^3');
  });

  it('carries a wrong equation on', () => {
    expect(marked(item, 'HE-ADD-UNSCALED').slice(1)).toEqual(['b: 1 : 1; 1/1', 'c: 1/1', 'd: 4.17 cm^3; 2/2']);
    expect(marked(item, 'TI-CM3-AS-DM3').slice(2)).toEqual(['c: 0.5000 mol; 0/1', 'd: 2.50 × 10^4 cm^3; 2/2']);
  });

  it('is asked as a choice between what the slips give', () => {
    const options = asChoice(item, built.choice!)!.parts[0]!.options!;
    expect(options.map(({ slip }) => slip)).toEqual(['TI-RATIO-INVERTED', 'TI-RATIO-ONE', undefined]);
  });
});

// By hand: M(I₂) = 2 × 126.9 = 253.8; 0.635 / 253.8 = 2.502 × 10⁻³; × 2 = 5.00 × 10⁻³ mol of thiosulfate, × 248.2 = 1.24 g of Na₂S₂O₃·5H₂O.
// With 126.9 the amount is 5.004 × 10⁻³ and the mass 2.48 g.

describe('an element of two atoms that is weighed', () => {
  const item = checked(
    buildRatio(
      {
        ...MASSES,
        oxidant: tables.couple('I2/I^-'),
        reductant: tables.couple('S4O6^2-/S2O3^2-'),
        medium: 'neutral',
        known: { ...substance('I2', 'iodine'), measure: 'mass' },
        found: { ...substance('S2O3^2-', 'sodium thiosulfate pentahydrate'), measure: 'mass' },
        mass: parseDecimal('0.635'),
      },
      tables,
      asking('stretch'),
      words,
    ),
  );

  it('has the mass of its molecule', () => {
    expect(answerAt(item, 'molar-known')).toBe('253.8 g mol^-1');
    expect(answerAt(item, 'asked')).toBe('1.24 g');
  });

  it('costs one mark when the mass of one atom was taken', () => {
    expect(marked(item, 'TI-ONE-ATOM-M')).toEqual(['a: 2/2', 'b: 1/1', 'c: 0.005004 mol; 1/2', 'd: 2.48 g; 3/3']);
  });
});

describe('an amount on the way', () => {
  it('is also right with fewer figures where only zeros are left away', () => {
    const short = (text: string) => shorterFigures(parseDecimal(text).value);
    expect(short('0.00072')).toEqual(['7.20 × 10^-4', '7.2 × 10^-4']);
    expect(short('0.0005')).toEqual(['5.00 × 10^-4', '5 × 10^-4']);
    expect(short('0.002345')).toEqual(['0.00235']);
  });

  it('says so in the scheme', () => {
    const item = checked(buildRatio(SOLUTIONS, tables, asking('core'), words));
    const [, , also] = item.parts[2]!.points[0]!.accept;
    expect(plainText(also!)).toBe('5 × 10^-4 mol');
  });
});

it('takes only pairs that react in time and in a solution that stays clear', () => {
  const may = (oxidant: string, reductant: string, one: string, other: string) =>
    mayStandTogether(
      substancesFor(one, tables)[0]!,
      substancesFor(other, tables)[0]!,
      { oxidant: tables.couple(oxidant), reductant: tables.couple(reductant), medium: 'acid' },
      tables,
    );
  expect(may('MnO4^-/Mn^2+', 'Fe^3+/Fe^2+', 'MnO4^-', 'Fe^2+')).toBe(true);
  expect(may('Ag^+/Ag', 'VO2^+/VO^2+', 'Ag^+', 'VO^2+')).toBe(false);
  expect(may('PbO2/Pb^2+', 'VO2^+/VO^2+', 'PbO2', 'VO^2+')).toBe(false);
});
