import { buretteFigure } from '../../src/document/figures/burette-figure.ts';
import { cellFigure } from '../../src/document/figures/cell-figure.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { say } from './say.ts';

/** The cell of the first question. */
export const CELL = cellFigure(
  { name: 'P', kind: 'metal', electrode: 'zinc', ions: [say('{Zn^2+}')] },
  { name: 'Q', kind: 'solution', electrode: 'platinum', ions: [say('{Cr2O7^2-}'), say('{Cr^3+}'), say('{H^+}')] },
);

/** The burette of the titration, read twice. */
export const BURETTE = buretteFigure([
  { name: 'start', reading: parseDecimal('0.10') },
  { name: 'end', reading: parseDecimal('18.60') },
]);
