import { describe, expect, it } from 'vitest';
import { Rational } from '../../src/exact/rational.ts';
import { acceptedRange } from '../../src/questions/accepted-range.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import { earnedIn, rowsOf } from '../../src/questions/rows.ts';
import { showNumber } from '../../src/questions/show-value.ts';
import { solve } from '../../src/questions/solve.ts';
import type { Values } from '../../src/questions/value.ts';
import { smallItem } from './small-item.ts';

const figure = (values: Values, id: string) => {
  const value = values.get(id)!;
  return value.kind === 'number' ? showNumber(value.value, { sf: 3 }) : undefined;
};
const rows = rowsOf(smallItem);
const row = (id: string) => rows.find(({ slip }) => slip === id)!;
const [a, b] = smallItem.parts;

describe('working a question', () => {
  it('gives the figures worked by hand', () => {
    const values = solve(smallItem);
    expect(figure(values, 'n')).toBe('4.80 × 10^-4');
    expect(figure(values, 'x')).toBe('0.0960');
  });

  it('prints the line from the figures on the page', () => {
    const line = smallItem.steps[1]!.line!(solve(smallItem, 'printed'));
    const fraction = line.right[0]!;
    expect(fraction.kind === 'fraction' && plainText(fraction.above)).toBe('4.800 × 10^-4 × 5 × 1000');
    expect(plainText(line.right.slice(1))).toBe(' = 0.0960 mol dm^-3');
  });

  it('goes on in later parts from a shown value, whatever was found before', () => {
    const shown = { kind: 'number', value: Rational.parse('0.0005'), unit: 'mol' } as const;
    const parts = [{ ...a!, command: 'Show that' as const, restart: { step: 'n', shown } }, b!];
    expect(figure(solve({ ...smallItem, parts }), 'x')).toBe('0.100');
    const slip = smallItem.slips[0]!;
    expect(figure(solve({ ...smallItem, parts }, 'full', slip), 'x')).toBe('0.100');
  });
});

describe('"if you see this"', () => {
  it('follows a slip into later parts and gives the marks that carry on', () => {
    const litres = row('TI-CM3-AS-DM3');
    expect(plainText(litres.seen.get('a')![0]!.content)).toBe('0.4800 mol');
    expect(plainText(litres.seen.get('b')![0]!.content)).toBe('96.0 mol dm^-3');
    expect([earnedIn(litres, a!), earnedIn(litres, b!)]).toEqual([0, 1]);
  });

  it('leaves earlier parts alone', () => {
    const ratio = row('TI-RATIO-ONE');
    expect(ratio.seen.has('a')).toBe(false);
    expect(plainText(ratio.seen.get('b')![0]!.content)).toBe('0.0192 mol dm^-3');
    expect([earnedIn(ratio, a!), earnedIn(ratio, b!)]).toEqual([1, 0]);
  });

  it('merges slips that look alike and drops those that change nothing', () => {
    expect(row('TI-RATIO-ONE').aliases).toEqual(['TWIN']);
    expect(rows.map(({ slip }) => slip)).toEqual(['TI-CM3-AS-DM3', 'TI-RATIO-ONE']);
  });
});

describe('the accepted range', () => {
  const withConcentration = (c: string) => ({
    ...smallItem,
    data: smallItem.data.map((datum) =>
      datum.id === 'c' ? { ...datum, value: { kind: 'number', value: Rational.parse(c), unit: 'mol dm^-3' } as const } : datum,
    ),
  });
  const range = (c: string) => {
    const { least, most } = acceptedRange(withConcentration(c), 'x');
    return [showNumber(least, { sf: 3 }), showNumber(most, { sf: 3 })];
  };

  it('is one figure where rounding on the way makes no difference', () => {
    // by hand: 0.0200 × 24.0 / 1000 = 4.80 × 10⁻⁴ exactly
    expect(range('0.0200')).toEqual(['0.0960', '0.0960']);
  });

  it('spans what rounding to three figures on the way gives', () => {
    // by hand: 0.0215 × 24.0 / 1000 = 5.16 × 10⁻⁴; 0.0193 × 24.0 = 4.632, so 4.632 × 10⁻⁴ gives 0.09264 (0.0926) and 4.63 × 10⁻⁴ gives 0.0926
    expect(range('0.0193')).toEqual(['0.0926', '0.0926']);
    // 0.0231 × 24.0 = 5.544: in full 0.11088 (0.111); rounded 5.54 gives 0.1108 (0.111)
    expect(range('0.0231')).toEqual(['0.111', '0.111']);
    // 0.0154 × 24.0 = 3.696: in full 0.07392 (0.0739); rounded 3.70 gives 0.0740
    expect(range('0.0154')).toEqual(['0.0739', '0.0740']);
  });
});
