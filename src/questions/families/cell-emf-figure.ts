import type { Block } from '../../document/block.ts';
import { cellFigure } from '../../document/figures/cell-figure.ts';
import type { HalfCellDrawing } from '../../document/figures/half-cell-shape.ts';
import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { dissolved, halfCellKind, undissolved } from '../half-cell.ts';
import { potentialLadder } from '../potential-ladder.ts';
import { bare } from '../without-states.ts';
import type { CellFacts, CellOnPage } from './cell-emf-facts.ts';

/** The two half-cells that are joined, in printed order. */
export function drawnCell({ cells }: CellFacts, tables: Tables): Block {
  const [first, second] = cells;
  return { kind: 'figure', figure: cellFigure(drawnHalfCell(first, tables), drawnHalfCell(second, tables)) };
}

function drawnHalfCell({ label, couple }: CellOnPage, tables: Tables): HalfCellDrawing {
  const kind = halfCellKind(couple, tables);
  if (!kind) throw new Error(`${couple.id} makes no half-cell`);
  const name = undissolved(couple, tables);
  return {
    name: label,
    kind,
    electrode: kind === 'metal' && name !== undefined ? name : 'platinum',
    ...(kind === 'gas' && name !== undefined ? { gas: name } : {}),
    ions: dissolved(couple, tables).map((formula) => [species(bare(formula))]),
  };
}

/** Both couples on a ladder of potentials, with the way of the electrons. */
export function cellLadder({ cells, negative, positive }: CellFacts, words: Words): Block {
  const couples = cells.map(({ couple }) => couple);
  return potentialLadder(couples, [[negative.couple, positive.couple]], words.inline('ladder'));
}
