import { type Decimal, printDecimal } from '../../exact/decimal.ts';
import { Rational } from '../../exact/rational.ts';
import type { Figure, Primitive } from '../figure.ts';
import type { Inline } from '../inline.ts';
import { speakInlines, speakQuantity } from '../spoken.ts';
import { symbol } from '../symbols.ts';
import { arrowDown, figure, label, line, nudged } from './shapes.ts';
import { spread } from './spread.ts';

/** A couple on the ladder. */
export interface LadderRung {
  readonly oxidised: readonly Inline[];
  readonly reduced: readonly Inline[];
  /** E° in volts, as printed on the sheet */
  readonly volts: Decimal;
}

/** Electrons pass from one couple to another; places in the list of rungs. */
export interface LadderArrow {
  readonly from: number;
  readonly to: number;
}

const WIDTH = 300;
const AXIS = 44;
const RUNG_END = 156;
const LABELS = 172;
/** Baseline to baseline of labels. */
const PITCH = 14;
const TOP = 22;
/** An arrow shorter than this looks like a blot; where rungs stand close, the ladder is drawn taller, up to a bound. */
const SHORTEST = 14;
const TALLEST = 200;
const HALF = Rational.of(1, 2);

/**
 * A potential ladder: an axis in volts, most negative at the top, a rung for each couple, and arrows from the couple that gives electrons
 * to the one that takes them.
 */
export function ladderFigure(rungs: readonly LadderRung[], arrows: readonly LadderArrow[]): Figure {
  const least = halfVolts(rungs, (a, b) => a.compare(b), false);
  const most = halfVolts(rungs, (a, b) => b.compare(a), true);
  const range = most.minus(least).toNumber();
  const drawn = Math.max(104, rungs.length * 22, Math.min(TALLEST, (SHORTEST * range) / nearest(rungs, arrows)));
  const yOf = (volts: Rational): number => TOP + (drawn * volts.minus(least).toNumber()) / range;
  return {
    width: WIDTH,
    height: TOP + drawn + 12,
    alt: altOf(rungs, arrows),
    draw: [
      ...axis(least, most, yOf),
      ...rungLines(rungs.map((rung) => ({ y: yOf(rung.volts.value), text: written(rung) }))),
      ...arrows.flatMap(({ from, to }, at) =>
        arrowDown(AXIS + 30 + at * 22, yOf(rungs[from]!.volts.value) + 0.7, yOf(rungs[to]!.volts.value) - 0.7),
      ),
    ],
  };
}

/** The least difference, in volts, that an arrow spans. */
function nearest(rungs: readonly LadderRung[], arrows: readonly LadderArrow[]): number {
  const spans = arrows.map(({ from, to }) => rungs[from]!.volts.value.minus(rungs[to]!.volts.value).abs().toNumber());
  return Math.min(...spans);
}

/** `Zn²⁺/Zn  −0.76 V` */
function written({ oxidised, reduced, volts }: LadderRung): Inline[] {
  const value: Inline = { kind: 'quantity', number: printDecimal(volts, true), unit: 'V' };
  return [...oxidised, { kind: 'text', text: '/' }, ...reduced, { kind: 'text', text: '\u00a0\u00a0' }, value];
}

/** The half volt at or beyond the outermost rung, a tick further where a rung stands on it. */
function halfVolts(rungs: readonly LadderRung[], order: (a: Rational, b: Rational) => number, up: boolean): Rational {
  const outermost = rungs.map(({ volts }) => volts.value).sort(order)[0] ?? Rational.zero;
  const doubled = outermost.over(HALF);
  const floor = Rational.of(doubled.n >= 0n ? doubled.n / doubled.d : -((-doubled.n + doubled.d - 1n) / doubled.d));
  return (up ? floor.plus(Rational.one) : floor.equals(doubled) ? floor.minus(Rational.one) : floor).times(HALF);
}

/** The upright axis with a tick every half volt. */
function axis(least: Rational, most: Rational, yOf: (volts: Rational) => number): Primitive[] {
  const ticks: Primitive[] = [];
  for (let volts = least; volts.compare(most) <= 0; volts = volts.plus(HALF)) {
    const y = yOf(volts);
    ticks.push(
      line([
        [AXIS - 4, y],
        [AXIS, y],
      ]),
      nudged(figure(printDecimal({ value: volts, places: 1 }, true), 'E', AXIS - 4, y, 'end'), -0.3, 0),
    );
  }
  return [
    line([
      [AXIS, yOf(least) - 6],
      [AXIS, yOf(most) + 6],
    ]),
    ...ticks,
    nudged(label([[symbol('E°'), { kind: 'text', text: '\u00a0/\u00a0V' }]], AXIS, yOf(least) - 6), 0, -1),
  ];
}

/** Rungs at their heights; labels as near as they can stand, each joined to its rung. */
function rungLines(rungs: readonly { readonly y: number; readonly text: readonly Inline[] }[]): Primitive[] {
  const sorted = [...rungs].sort((a, b) => a.y - b.y);
  const heights = spread(
    sorted.map(({ y }) => y),
    PITCH,
  );
  return sorted.flatMap(({ y, text }, at) => [
    line(
      [
        [AXIS, y],
        [RUNG_END, y],
      ],
      { line: 1.4 },
    ),
    line([
      [RUNG_END, y],
      [LABELS - 3, heights[at]!],
    ]),
    label([text], LABELS, heights[at]!, 'start'),
  ]);
}

function altOf(rungs: readonly LadderRung[], arrows: readonly LadderArrow[]): string {
  const spoken = (at: number) => `${speakInlines(rungs[at]!.oxidised)} with ${speakInlines(rungs[at]!.reduced)}`;
  const order = rungs.map((_, at) => at).sort((a, b) => rungs[a]!.volts.value.compare(rungs[b]!.volts.value));
  const list = order.map((at) => `${spoken(at)}: ${speakQuantity(printDecimal(rungs[at]!.volts, true), 'V')}`);
  const joins = arrows.map(({ from, to }) => `An arrow leads from the couple ${spoken(from)} to the couple ${spoken(to)}.`);
  return [`Ladder of standard electrode potentials, the most negative at the top. ${list.join('; ')}.`, ...joins].join(' ');
}
