import { type Decimal, decimalAt, printDecimal } from '../../exact/decimal.ts';
import { Rational } from '../../exact/rational.ts';
import type { Figure, Primitive, Segment } from '../figure.ts';
import { LINE, line, nudged, words } from './shapes.ts';

/** A burette as it is read once. */
export interface BuretteReading {
  /** `start`, `end` */
  readonly name: string;
  /** cm³, to 0.05 */
  readonly reading: Decimal;
}

/** Points for 1 cm³: a division of 0.1 cm³ is 5 points high, so that half of one can be told. */
const SCALE = 50;
const DIVISIONS = 24;
const TENTH = Rational.of(1, 10);
const TOP = 6;
const WIDTH = 100;
const TUBE = { left: 44, right: 70 } as const;
/** How far the meniscus rises at the glass. */
const RISE = 6;

/**
 * Sections of a burette with the level of the liquid, numbers increasing downwards, a mark every 0.1 cm³. The reading is the bottom of
 * the meniscus.
 */
export function buretteFigure(readings: readonly BuretteReading[]): Figure {
  const foot = TOP + (DIVISIONS * SCALE) / 10;
  return {
    width: WIDTH * readings.length,
    height: foot + 20,
    alt: altOf(readings),
    draw: readings.flatMap(({ name, reading }, at) => {
      const dx = at * WIDTH;
      const first = firstMark(reading);
      return [
        ...liquid(dx, yOf(reading.value, first), foot),
        ...[TUBE.left, TUBE.right].map((x) =>
          line([
            [dx + x, TOP - 4],
            [dx + x, foot + 4],
          ]),
        ),
        ...marks(first, dx),
        nudged(words(name, dx + (TUBE.left + TUBE.right) / 2, foot + 4), 0, 1),
      ];
    }),
  };
}

/** The topmost mark, in tenths of a cm³: the level stands in the middle of the section, yet never above the mark 0. */
function firstMark({ value }: Decimal): bigint {
  const tenths = decimalAt(value.over(TENTH), 0).value.n - 11n;
  return tenths < 0n ? 0n : tenths;
}

function yOf(volume: Rational, first: bigint): number {
  return TOP + volume.minus(Rational.of(first, 10)).times(Rational.of(SCALE)).toNumber();
}

/** Short marks for tenths, longer ones for halves, the longest numbered. */
function marks(first: bigint, dx: number): Primitive[] {
  return Array.from({ length: DIVISIONS + 1 }, (_, at) => first + BigInt(at)).flatMap((tenths): Primitive[] => {
    const y = yOf(Rational.of(tenths, 10), first);
    const length = tenths % 10n === 0n ? 17 : tenths % 5n === 0n ? 12 : 8;
    const mark = line([
      [dx + TUBE.left, y],
      [dx + TUBE.left + length, y],
    ]);
    return tenths % 10n === 0n ? [mark, nudged(words(String(tenths / 10n), dx + TUBE.left, y, 'end'), -0.5, 0)] : [mark];
  });
}

/** Liquid below a meniscus whose lowest point stands at `level`; it goes on below the section, so no line closes it. */
function liquid(dx: number, level: number, foot: number): Primitive[] {
  const [left, right] = [dx + TUBE.left, dx + TUBE.right];
  const middle = (left + right) / 2;
  const dip = (right - left) / 4;
  const meniscus: Segment[] = [
    { to: 'move', x: left, y: level - RISE },
    { to: 'curve', x1: left + 2, y1: level - 1, x2: middle - dip, y2: level, x: middle, y: level },
    { to: 'curve', x1: middle + dip, y1: level, x2: right - 2, y2: level - 1, x: right, y: level - RISE },
  ];
  const below: Segment[] = [{ to: 'line', x: right, y: foot + 4 }, { to: 'line', x: left, y: foot + 4 }, { to: 'close' }];
  return [
    { kind: 'path', path: [...meniscus, ...below], line: 0, fill: 'grey' },
    { kind: 'path', path: meniscus, line: LINE },
  ];
}

/** What is seen, in divisions: the figure is left to be read off, by ear as by eye. */
function altOf(readings: readonly BuretteReading[]): string {
  const one = readings.length === 1;
  const seen = readings.map(({ name, reading }) => {
    const halves = decimalAt(reading.value.times(Rational.of(20)), 0).value.n;
    const [whole, below] = [halves / 20n, halves % 20n];
    const divisions = printDecimal({ value: Rational.of(below, 2), places: below % 2n === 0n ? 0 : 1 });
    const place = below === 0n ? `level with the mark ${whole}` : `${divisions} divisions below the mark ${whole}`;
    return `${name}: the bottom of the meniscus is ${place}`;
  });
  return `${one ? 'A section of a burette' : `${readings.length} sections of a burette`}, ten divisions to each cubic centimetre, numbers increasing downwards. ${seen.join('; ')}.`;
}
