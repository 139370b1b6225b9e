import type { Couple } from '../chemistry/couple.ts';
import type { Block } from '../document/block.ts';
import { ladderFigure } from '../document/figures/ladder-figure.ts';
import type { Inline } from '../document/inline.ts';
import { species } from '../document/inlines.ts';
import { bare } from './without-states.ts';

/**
 * A potential ladder of couples, with an arrow for each pair of them that react: electrons pass from the first to the second.
 * @param couples as printed on the sheet
 * @param pairs couples of the list: the one that gives electrons, the one that takes them
 */
export function potentialLadder(
  couples: readonly Couple[],
  pairs: readonly (readonly [from: Couple, to: Couple])[],
  caption: readonly Inline[],
): Block {
  const rungs = couples.map(({ oxidised, reduced, printed }) => ({
    oxidised: [species(bare(oxidised))],
    reduced: [species(bare(reduced))],
    volts: printed,
  }));
  const arrows = pairs.map(([from, to]) => ({ from: couples.indexOf(from), to: couples.indexOf(to) }));
  return { kind: 'figure', figure: ladderFigure(rungs, arrows), caption };
}
