import type { Block } from '../../../document/block.ts';
import type { Room } from '../room.ts';
import { type Slab, withAbove } from '../slab.ts';
import { layAnswer } from './answer-block.ts';
import { layCut } from './cut-block.ts';
import { layFigure } from './figure-block.ts';
import { layGiven } from './given-block.ts';
import { layHead } from './head-block.ts';
import { layOptions } from './options-block.ts';
import { layLonePart } from './part-block.ts';
import { layQuestion } from './question-block.ts';
import { layScheme } from './scheme-block.ts';
import { layStrip } from './strip-block.ts';
import { layTable } from './table-block.ts';
import { layDisplay, layHeading, layList, layPageBreak, layParagraph, laySmallPrint } from './text-blocks.ts';
import { layWorking } from './working-block.ts';

type Handlers = { readonly [K in Block['kind']]: (block: Extract<Block, { kind: K }>, room: Room) => Slab[] };

/** The PDF printer: one handler for each kind of block. To print a new kind, add its handler here. */
const HANDLERS: Handlers = {
  paragraph: layParagraph,
  heading: layHeading,
  list: layList,
  table: (table, room) => layTable(table, room),
  given: layGiven,
  display: layDisplay,
  working: layWorking,
  figure: layFigure,
  answer: layAnswer,
  options: layOptions,
  question: layQuestion,
  part: layLonePart,
  scheme: layScheme,
  head: layHead,
  strip: layStrip,
  'small-print': laySmallPrint,
  'page-break': layPageBreak,
  cut: layCut,
};

/** Lays blocks one below the other. An unknown kind is a fault of ours. */
export function layBlocks(blocks: readonly Block[], room: Room): Slab[] {
  return blocks.flatMap((block, i) => {
    const handler = HANDLERS[block.kind] as ((block: Block, room: Room) => Slab[]) | undefined;
    if (!handler) throw new Error(`the PDF printer knows no block of kind \`${(block as { kind: string }).kind}\``);
    const slabs = handler(block, room);
    return blocks[i - 1]?.kind === 'heading' ? withAbove(slabs, (slabs[0]?.above ?? 0) * UNDER_HEADING) : slabs;
  });
}

/** What follows a heading stands nearer to it than to what came before. */
const UNDER_HEADING = 0.4;
