import { describe, expect, it } from 'vitest';
import { figuresOf, parseDecimal } from '../../src/exact/decimal.ts';
import { asChoice } from '../../src/questions/choice.ts';
import { acidsIn } from '../../src/questions/families/titration-acids.ts';
import type { TitrationDraw } from '../../src/questions/families/titration-concentration.ts';
import { buildTitration } from '../../src/questions/families/titration-concentration-build.ts';
import { drawConcentration } from '../../src/questions/families/titration-limits.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import { drawsFrom } from '../../src/random/draws.ts';
import { tables } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('titration-concentration');
const caution = { substance: 's', caution: 'c', signal: 'none', statements: [], source: 's', fromMemory: false } as const;
const system = tables.titrations.find(({ titrant, analyte }) => titrant === 'MnO4^-/Mn^2+' && analyte === 'Fe^3+/Fe^2+')!;

/** 25.0 cm³ portions of iron(II), 23.45 cm³ of 0.0200 mol dm⁻³ manganate(VII). */
const IRON: TitrationDraw = {
  system,
  unknown: 'analyte',
  concentration: parseDecimal('0.0200'),
  portion: parseDecimal('25.0'),
  titre: parseDecimal('23.45'),
  acid: parseDecimal('20'),
  cautions: [caution],
};

// By hand: 0.0200 × 23.45 / 1000 = 4.690 × 10⁻⁴ mol; × 5 = 2.345 × 10⁻³ mol; / 0.0250 = 0.0938 mol dm⁻³.
// 1 : 1 gives 0.01876, upside down 0.003752, cm³ left 93.8, the 20 cm³ of acid counted 2.345 × 10⁻³ / 0.0450 = 0.05211.

describe('iron(II) with manganate(VII)', () => {
  const built = buildTitration(IRON, tables, asking('core'), words);
  const item = checked(built);

  it('gives amount, equation and concentration', () => {
    expect(answerAt(item, 'amount')).toBe('4.690 × 10^-4 mol');
    expect(answerAt(item, 'equation')).toBe('MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+');
    expect(answerAt(item, 'ratio')).toBe('5 : 1');
    expect(answerAt(item, 'concentration')).toBe('0.0938 mol dm^-3');
  });

  it.each([
    ['TI-RATIO-ONE', ['a: 1/1', 'b: 2/2', 'c: 0.0188 mol dm^-3; 1/2', 'd: 1/1']],
    ['TI-RATIO-INVERTED', ['a: 1/1', 'b: 2/2', 'c: 0.00375 mol dm^-3; 1/2', 'd: 1/1']],
    ['TI-CM3-AS-DM3', ['a: 0.4690 mol; 0/1', 'b: 2/2', 'c: 93.8 mol dm^-3; 2/2', 'd: 1/1']],
    ['TI-WATER-COUNTED', ['a: 1/1', 'b: 2/2', 'c: 0.0521 mol dm^-3; 1/2', 'd: 1/1']],
    ['TI-ENDPOINT-REVERSED', ['a: 1/1', 'b: 2/2', 'c: 2/2', 'd: pale pink > colourless; 0/1']],
    [
      'HE-ADD-UNSCALED',
      ['a: 1/1', 'b: MnO4^- + 8H^+ + Fe^2+ -> Mn^2+ + 4H2O + Fe^3+; 1/2', 'c: 0.0188 mol dm^-3; 2/2', 'd: 1/1'],
    ],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });

  it('is asked as a choice between what the slips give, in ascending order', () => {
    const options = asChoice(item, built.choice!)!.parts[0]!.options!;
    expect(options.map(({ slip }) => slip)).toEqual(['TI-RATIO-INVERTED', 'TI-RATIO-ONE', undefined]);
  });
});

// By hand: 25.0 cm³ of the stock in 250.0 cm³ make it ten times as strong as what is titrated: 0.938 mol dm⁻³.

describe('a stock that is diluted first', () => {
  const dilution = { sample: parseDecimal('25.0'), flask: parseDecimal('250.0') };
  const item = checked(buildTitration({ ...IRON, dilution }, tables, asking('stretch'), words));

  it('is scaled back', () => {
    expect(answerAt(item, 'concentration')).toBe('0.09380 mol dm^-3');
    expect(answerAt(item, 'stock')).toBe('0.938 mol dm^-3');
  });

  it.each([
    ['TI-ALIQUOT-NOT-SCALED', 'c: 0.0938 mol dm^-3; 2/3'],
    ['TI-ALIQUOT-INVERTED', 'c: 0.00938 mol dm^-3; 2/3'],
    ['TI-FLASK-VOLUME', 'c: 0.0938 mol dm^-3; 2/3'],
    ['TI-RATIO-ONE', 'c: 0.188 mol dm^-3; 2/3'],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(['a: 1/1', 'b: 2/2', marks, 'd: 2/2']);
  });
});

describe('the way to the stock through the amount in the whole flask', () => {
  const dilution = { sample: parseDecimal('25.0'), flask: parseDecimal('250.0') };
  const item = checked(buildTitration({ ...IRON, dilution }, tables, asking('stretch'), words));
  const [, diluted, stock] = item.parts[2]!.points;

  it('earns the same marks', () => {
    // 2.345 × 10⁻³ mol in 25.0 cm³ is 0.02345 mol in 250.0 cm³, and so in the 25.0 cm³ of stock
    expect(plainText(diluted!.accept[1]!)).toBe(
      'multiplies that amount by 250.0 ÷ 25.0, for the amount in the whole flask: 0.02345 mol',
    );
    expect(plainText(stock!.accept.at(-1)!)).toBe(
      'divides the amount in the whole flask by the volume of stock taken, 25.0 cm^3',
    );
  });
});

describe('a choice at stretch', () => {
  const dilution = { sample: parseDecimal('25.0'), flask: parseDecimal('250.0') };
  const built = buildTitration({ ...IRON, dilution }, tables, asking('stretch', 'choice'), words);

  it('asks for the stock, and not for what was titrated', () => {
    const part = asChoice(checked(built), built.choice!)!.parts[0]!;
    expect(part.answers).toEqual(['stock']);
    expect(part.options!.map(({ slip }) => slip)).toContain('TI-ALIQUOT-NOT-SCALED');
  });
});

it('adds phosphoric acid where the indicator needs the colour of iron(III) gone', () => {
  const { acid } = tables.titrations.find(({ indicator }) => indicator.includes('diphenylamine'))!;
  expect(acidsIn(acid!).map(({ key }) => key)).toEqual(['H2SO4', 'H3PO4']);
});

it('tells other colours of an end point by when they are seen', () => {
  for (const { alsoAccepted } of tables.titrations) {
    for (const also of alsoAccepted) expect(also).toMatch(/ at (?:first|the end)$/);
  }
});

it('labels a weak solution with three figures', () => {
  const draws = drawsFrom('labels');
  const labels = Array.from({ length: 200 }, () => drawConcentration(draws, 'MnO4^-'));
  expect(labels.some(({ value }) => value.compare(parseDecimal('0.01').value) < 0)).toBe(true);
  expect(new Set(labels.map(figuresOf))).toEqual(new Set([3]));
});
