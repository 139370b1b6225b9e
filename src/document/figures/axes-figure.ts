import { type Decimal, printDecimal } from '../../exact/decimal.ts';
import { Rational } from '../../exact/rational.ts';
import type { Figure, Primitive } from '../figure.ts';
import type { Inline } from '../inline.ts';
import { speakInlines } from '../spoken.ts';
import { grid, SQUARE } from './grid.ts';
import { figure, label, line, nudged } from './shapes.ts';

/** An axis along the edge of a squared grid. */
export interface Axis {
  /** quantity and unit: *A*, or *c*(Cu²⁺) / mol dm⁻³ */
  readonly label: readonly Inline[];
  /** centimetre squares along the axis */
  readonly squares: number;
  /** value at the origin and for each square; no figures stand at an axis without them, so that it is the pupil's to scale */
  readonly scale?: { readonly start: Decimal; readonly step: Decimal };
}

/** What is plotted, in the units of the axes; both need a scale. */
export interface Plot {
  readonly points: readonly (readonly [x: Rational, y: Rational])[];
  /** a straight line from one point to another */
  readonly through?: readonly [from: readonly [Rational, Rational], to: readonly [Rational, Rational]];
}

const LEFT = 46;
const TOP = 22;

/** Axes with a squared grid, with or without points plotted as crosses. */
export function axesFigure(x: Axis, y: Axis, plot: Plot = { points: [] }): Figure {
  const [right, foot] = [LEFT + x.squares * SQUARE, TOP + y.squares * SQUARE];
  const place = ([across, up]: readonly [Rational, Rational]): readonly [number, number] => [
    LEFT + along(x, across),
    foot - along(y, up),
  ];
  return {
    width: right + 18,
    height: foot + 36,
    alt: altOf(x, y, plot),
    draw: [
      ...grid(LEFT, TOP, x.squares, y.squares),
      line(
        [
          [LEFT, TOP],
          [LEFT, foot],
          [right, foot],
        ],
        { line: 1.2 },
      ),
      ...figures(x).map((text, at) => nudged(figure(text, 'x', LEFT + at * SQUARE, foot), 0, 1)),
      ...figures(y).map((text, at) => nudged(figure(text, 'y', LEFT, foot - at * SQUARE, 'end'), -0.6, 0)),
      nudged(label([x.label], right, foot, 'end'), 0, 2.7),
      nudged(label([y.label], LEFT, TOP, 'start'), -2, -1.5),
      ...(plot.through ? [line(plot.through.map(place))] : []),
      ...plot.points.flatMap((point) => cross(place(point))),
    ],
  };
}

/** Points from the origin to a value. */
function along({ scale }: Axis, value: Rational): number {
  if (!scale) throw new Error('expected an axis with a scale, to plot on');
  return value.minus(scale.start.value).over(scale.step.value).toNumber() * SQUARE;
}

function figures({ squares, scale }: Axis): string[] {
  if (!scale) return [];
  const places = Math.max(scale.start.places, scale.step.places);
  const value = (at: number) => scale.start.value.plus(scale.step.value.times(Rational.of(at)));
  return Array.from({ length: squares + 1 }, (_, at) => printDecimal({ value: value(at), places }));
}

/** Two strokes that cross at a point. */
function cross([x, y]: readonly [number, number]): Primitive[] {
  const r = 3;
  return [
    line([
      [x - r, y - r],
      [x + r, y + r],
    ]),
    line([
      [x - r, y + r],
      [x + r, y - r],
    ]),
  ];
}

function altOf(x: Axis, y: Axis, { points, through }: Plot): string {
  const axis = (name: string, each: Axis): string => {
    const all = figures(each);
    const range = all.length > 0 ? `, from ${all[0]} to ${all.at(-1)}` : ', without figures';
    return `${name}, ${speakInlines(each.label)}${range}, ${each.squares} squares`;
  };
  const parts = [`Axes with a squared grid. ${axis('Along', x)}. ${axis('Upwards', y)}.`];
  if (points.length > 0) parts.push(`${points.length} points are plotted.`);
  if (through) parts.push('A straight line is drawn.');
  return parts.join(' ');
}

/** A squared grid to plot on, without axes. */
export function gridFigure(across: number, down: number): Figure {
  return {
    width: across * SQUARE,
    height: down * SQUARE,
    alt: `Squared grid to draw on, ${across} by ${down} squares.`,
    draw: grid(0, 0, across, down),
  };
}
