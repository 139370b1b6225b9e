import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalText } from '../../src/exact/decimal.ts';
import { codeOf, isCode } from '../../src/random/code.ts';
import { drawsFrom } from '../../src/random/draws.ts';
import { pronounceable } from '../../src/random/pronounceable.ts';

describe('a stream of draws', () => {
  it('is the same for the same label and differs for another', () => {
    const first = (label: string) =>
      Array.from(
        { length: 20 },
        (
          (draws) => () =>
            draws.integer(0, 999)
        )(drawsFrom(label)),
      );
    expect(first('a')).toEqual(first('a'));
    expect(first('a')).not.toEqual(first('b'));
  });

  it('keeps its first numbers from version to version', () => {
    const draws = drawsFrom('stored seed');
    expect(Array.from({ length: 8 }, () => draws.integer(0, 99))).toMatchInlineSnapshot(`
      [
        93,
        29,
        77,
        67,
        24,
        81,
        53,
        35,
      ]
    `);
  });

  it('refuses an empty label, which would be seeded from the clock', () => {
    expect(() => drawsFrom('')).toThrow('at least one character');
  });

  it('stays within what is asked', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), fc.integer({ min: -50, max: 50 }), fc.nat(100), (label, least, span) => {
        const drawn = drawsFrom(label).integer(least, least + span);
        expect(drawn >= least && drawn <= least + span).toBe(true);
      }),
    );
  });

  it('shuffles without losing or doubling anything', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), fc.array(fc.integer()), (label, items) => {
        expect(
          drawsFrom(label)
            .shuffle(items)
            .sort((a, b) => a - b),
        ).toEqual([...items].sort((a, b) => a - b));
      }),
    );
  });

  it('draws decimals on their grid', () => {
    const draws = drawsFrom('titres');
    const titres = Array.from({ length: 200 }, () => decimalText(draws.decimal('15.00', '35.00', '0.05', 2)));
    for (const titre of titres) expect(titre).toMatch(/^(?:1[5-9]|2\d|3[0-4])\.\d[05]$|^35\.00$/);
    expect(new Set(titres).size).toBeGreaterThan(100);
  });

  it('picks every item in time, in proportion to its weight', () => {
    const draws = drawsFrom('weights');
    const picked = Array.from({ length: 4000 }, () =>
      draws.weighted([
        { item: 'a', weight: 3 },
        { item: 'b', weight: 1 },
      ]),
    );
    const share = picked.filter((each) => each === 'a').length / picked.length;
    expect(share).toBeGreaterThan(0.71);
    expect(share).toBeLessThan(0.79);
  });
});

describe('a question code', () => {
  it('is eight characters that follow from seed, family, slot and variant', () => {
    const code = codeOf(['plover', 'cell-emf', 's1', 0]);
    expect(isCode(code)).toBe(true);
    expect(codeOf(['plover', 'cell-emf', 's1', 0])).toBe(code);
    const others = [
      ['plovers', 'cell-emf', 's1', 0],
      ['plover', 'cell-emf', 's2', 0],
      ['plover', 'cell-emf', 's1', 1],
    ] as const;
    for (const other of others) expect(codeOf([...other])).not.toBe(code);
  });

  it('does not confuse parts that read alike when joined', () => {
    expect(codeOf(['a', 'bc'])).not.toBe(codeOf(['ab', 'c']));
  });
});

describe('a made-up seed', () => {
  it('can be said aloud', () => {
    for (const label of ['one', 'two', 'three'])
      expect(pronounceable(drawsFrom(label))).toMatch(/^(?:[bdfghklmnprstvwz][aeiou]){3}[lmnrst]$/);
  });
});
