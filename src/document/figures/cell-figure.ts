import type { Figure, Primitive, Segment } from '../figure.ts';
import { speakInlines } from '../spoken.ts';
import { HALF_CELL, type HalfCellDrawing, halfCellShape } from './half-cell-shape.ts';
import { circle, corner, LINE, line, mirrored, words } from './shapes.ts';

const WIDTH = 372;
const HEIGHT = 130;
const MIDDLE = WIDTH / 2;
const VOLTMETER = 12;

/**
 * Two half-cells joined by a salt bridge, their electrodes wired to a voltmeter. No sign stands at either electrode, and both are drawn
 * alike, so that nothing tells which is positive.
 * @param first drawn at the left
 */
export function cellFigure(first: HalfCellDrawing, second: HalfCellDrawing): Figure {
  const wire = line([
    [HALF_CELL.electrode, first.kind === 'gas' ? 36 : 38],
    [HALF_CELL.electrode, HALF_CELL.wire],
    [MIDDLE - VOLTMETER, HALF_CELL.wire],
  ]);
  const otherWire = line([
    [HALF_CELL.electrode, second.kind === 'gas' ? 36 : 38],
    [HALF_CELL.electrode, HALF_CELL.wire],
    [MIDDLE - VOLTMETER, HALF_CELL.wire],
  ]);
  return {
    width: WIDTH,
    height: HEIGHT,
    alt: altOf(first, second),
    draw: [
      wire,
      mirrored(otherWire, MIDDLE),
      ...halfCellShape(first),
      ...halfCellShape(second).map((primitive) => mirrored(primitive, MIDDLE)),
      bridge(),
      line([
        [MIDDLE, 41],
        [MIDDLE, 45],
      ]),
      words('salt bridge', MIDDLE, 35),
      circle(MIDDLE, HALF_CELL.wire, VOLTMETER, { fill: 'paper' }),
      words('V', MIDDLE, HALF_CELL.wire),
    ],
  };
}

/** An inverted U with two walls, an end in each solution. */
function bridge(): Primitive {
  const tube = 8;
  const [inner, top, end, radius] = [HALF_CELL.right - 16, 45, 100, 12];
  const far = 2 * MIDDLE - inner;
  const path: Segment[] = [
    { to: 'move', x: inner, y: end },
    { to: 'line', x: inner, y: top + radius },
    corner([inner, top + radius], [inner + radius, top], 'upright'),
    { to: 'line', x: far - radius, y: top },
    corner([far - radius, top], [far, top + radius], 'along'),
    { to: 'line', x: far, y: end },
    { to: 'line', x: far - tube, y: end },
    { to: 'line', x: far - tube, y: top + radius },
    corner([far - tube, top + radius], [far - radius, top + tube], 'upright'),
    { to: 'line', x: inner + radius, y: top + tube },
    corner([inner + radius, top + tube], [inner + tube, top + radius], 'along'),
    { to: 'line', x: inner + tube, y: end },
    { to: 'close' },
  ];
  return { kind: 'path', path, line: LINE, fill: 'grey' };
}

function altOf(first: HalfCellDrawing, second: HalfCellDrawing): string {
  const joined = `Two half-cells, ${first.name} at the left and ${second.name} at the right. A salt bridge joins the solutions; wires join the electrodes to a voltmeter.`;
  return [joined, ...[first, second].map(spokenHalfCell)].join(' ');
}

function spokenHalfCell({ name, kind, electrode, gas, ions }: HalfCellDrawing): string {
  const what = kind === 'gas' ? `${gas} gas over ${electrode}` : electrode;
  return `In ${name}: ${what}, in a solution of ${ions.map(speakInlines).join('; ')}.`;
}
