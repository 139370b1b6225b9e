import type { Primitive, Segment } from '../figure.ts';
import type { Inline } from '../inline.ts';
import { circle, corner, LINE, label, line, nudged, rectangle, words } from './shapes.ts';

/** A half-cell as it is drawn. */
export interface HalfCellDrawing {
  /** `A` */
  readonly name: string;
  /** a metal in its own ions, platinum in mixed ions, or a gas over platinum */
  readonly kind: 'metal' | 'solution' | 'gas';
  /** name of the metal, `platinum` for the other two */
  readonly electrode: string;
  readonly gas?: string;
  /** dissolved species, each a run of its own */
  readonly ions: readonly (readonly Inline[])[];
}

/** Places of the left half-cell, in points; the right one mirrors it. */
export const HALF_CELL = { left: 78, right: 162, rim: 56, foot: 114, liquid: 70, electrode: 106, wire: 14 } as const;

const { left, right, rim, foot, liquid, electrode } = HALF_CELL;
/** Where labels end, and where their leaders begin. */
const LABELS = 66;
const LEADER = LABELS + 3;

/** Beaker, electrode and labels of the left half-cell. */
export function halfCellShape(drawing: HalfCellDrawing): Primitive[] {
  const name: Inline = { kind: 'text', text: drawing.name, weight: 'strong' };
  return [
    beaker(),
    line([
      [left, liquid],
      [right, liquid],
    ]),
    ...(drawing.kind === 'gas' ? gasElectrode(drawing) : plate(drawing)),
    leader(96, left + 12),
    label(drawing.ions, LABELS, 96, 'end'),
    nudged(label([[name]], (left + right) / 2, foot), 0, 1),
  ];
}

/** A glass with a lip and rounded lower corners. */
function beaker(): Primitive {
  const radius = 7;
  const path: Segment[] = [
    { to: 'move', x: left - 4, y: rim - 3 },
    { to: 'line', x: left, y: rim },
    { to: 'line', x: left, y: foot - radius },
    corner([left, foot - radius], [left + radius, foot], 'upright'),
    { to: 'line', x: right - radius, y: foot },
    corner([right - radius, foot], [right, foot - radius], 'along'),
    { to: 'line', x: right, y: rim },
    { to: 'line', x: right + 4, y: rim - 3 },
  ];
  return { kind: 'path', path, line: LINE };
}

/** A metal plate, or platinum as thin foil, that dips into the solution. */
function plate({ kind, electrode: name }: HalfCellDrawing): Primitive[] {
  const width = kind === 'metal' ? 10 : 5;
  return [
    rectangle(electrode - width / 2, 38, width, 64, { fill: 'grey' }),
    leader(48, electrode - width / 2),
    words(name, LABELS, 48, 'end'),
  ];
}

/** Platinum foil on a wire inside a tube that is open below, the gas led in at its side. */
function gasElectrode({ electrode: name, gas = '' }: HalfCellDrawing): Primitive[] {
  const half = 13;
  const [arm, mouth] = [46, 104];
  return [
    line([
      [electrode - half - 9, arm - 3],
      [electrode - half, arm - 3],
      [electrode - half, 36],
      [electrode + half, 36],
      [electrode + half, mouth],
    ]),
    line([
      [electrode - half - 9, arm + 3],
      [electrode - half, arm + 3],
      [electrode - half, mouth],
    ]),
    line([
      [electrode, 36],
      [electrode, 70],
    ]),
    rectangle(electrode - 5, 68, 10, 16, { fill: 'grey' }),
    ...[
      [-8, 98],
      [7, 96],
      [9, 84],
    ].map(([dx, y]) => circle(electrode + dx!, y!, 1.6)),
    leader(arm, electrode - half - 9),
    words(gas, LABELS, arm, 'end'),
    leader(74, electrode - 5),
    words(name, LABELS, 74, 'end'),
  ];
}

/** A short line from a label to what it names. */
function leader(y: number, to: number): Primitive {
  return line([
    [LEADER, y],
    [to, y],
  ]);
}
