import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { roundToFigures } from '../../src/exact/rounding.ts';
import { buildRatio } from '../../src/questions/families/mole-ratio-build.ts';
import { substancesFor } from '../../src/questions/families/mole-ratio-substance.ts';
import { numberOf } from '../../src/questions/number-of.ts';
import { solve } from '../../src/questions/solve.ts';
import { asking, wordsOf } from '../families/reading.ts';
import { tables } from '../support/data.ts';

/**
 * Source: OpenStax Chemistry 2e, section 19.1, end-of-chapter exercise on iron ore: iron(II) from 2.5 g of ore takes 19.17 mL of
 * 0.01 M dichromate; the printed answer is 2.57 % iron by mass.
 */
const PUBLISHED = { sample: '2.5', concentration: '0.0100', volume: '19.17', percent: '2.57' };

describe('mole-ratio, against a published exercise', () => {
  it('finds the amount of iron(II) that dichromate oxidises', () => {
    const [dichromate] = substancesFor('Cr2O7^2-', tables);
    const [iron] = substancesFor('Fe^2+', tables);
    const { item } = buildRatio(
      {
        oxidant: tables.couple('Cr2O7^2-/Cr^3+'),
        reductant: tables.couple('Fe^3+/Fe^2+'),
        medium: 'acid',
        known: { ...dichromate!, measure: 'solution' },
        found: { ...iron!, measure: 'amount' },
        concentration: parseDecimal(PUBLISHED.concentration),
        volume: parseDecimal(PUBLISHED.volume),
        told: 'half-equations',
        choosesRatio: false,
        cautions: [],
      },
      tables,
      asking('core'),
      wordsOf('mole-ratio'),
    );
    const amount = numberOf(solve(item), 'found-amount');
    const mass = amount.times(tables.atomicMasses.get('Fe')!.published.value);
    const percent = mass.times(Rational.of(100)).over(Rational.parse(PUBLISHED.sample));
    expect(roundToFigures(percent, 3).equals(Rational.parse(PUBLISHED.percent))).toBe(true);
  });
});
