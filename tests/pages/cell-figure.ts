import type { Figure, Primitive, Segment } from '../../src/document/figure.ts';
import { say } from './say.ts';

/** Two half-cells with a bridge and a voltmeter, drawn from lines, for the tests of the printer. */
export function cellFigure(): Figure {
  return {
    width: 300,
    height: 130,
    alt: 'Two beakers, P and Q, joined by a salt bridge; a plate in each is wired to a voltmeter.',
    draw: [
      ...[30, 190].flatMap((x): Primitive[] => [
        line([x, 50], [x, 120], [x + 80, 120], [x + 80, 50]),
        line([x + 2, 70], [x + 78, 70]),
        {
          kind: 'path',
          line: 1,
          fill: 'grey',
          path: segments([x + 20, 40], [x + 28, 40], [x + 28, 105], [x + 20, 105], [x + 20, 40]),
        },
      ]),
      line([54, 40], [54, 15], [138, 15]),
      line([162, 15], [214, 15], [214, 40]),
      line([90, 95], [90, 32], [210, 32], [210, 95]),
      { kind: 'path', line: 1, path: circle(150, 15, 12) },
      { kind: 'label', label: say('V'), x: 150, y: 19, anchor: 'middle' },
      { kind: 'label', label: say('P'), x: 70, y: 128.5, anchor: 'middle' },
      { kind: 'label', label: say('Q'), x: 230, y: 128.5, anchor: 'middle' },
    ],
  };
}

function segments(...points: (readonly [number, number])[]): Segment[] {
  return points.map(([x, y], i) => ({ to: i === 0 ? 'move' : 'line', x, y }));
}

function line(...points: (readonly [number, number])[]): Primitive {
  return { kind: 'path', line: 1, path: segments(...points) };
}

function circle(x: number, y: number, r: number): Segment[] {
  const k = r * 0.5523;
  return [
    { to: 'move', x: x + r, y },
    { to: 'curve', x1: x + r, y1: y + k, x2: x + k, y2: y + r, x, y: y + r },
    { to: 'curve', x1: x - k, y1: y + r, x2: x - r, y2: y + k, x: x - r, y },
    { to: 'curve', x1: x - r, y1: y - k, x2: x - k, y2: y - r, x, y: y - r },
    { to: 'curve', x1: x + k, y1: y - r, x2: x + r, y2: y - k, x: x + r, y },
    { to: 'close' },
  ];
}
