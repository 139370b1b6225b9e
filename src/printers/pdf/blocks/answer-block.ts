import type { AnswerBlock, AnswerSpace, Filled } from '../../../document/block.ts';
import { axesFigure, gridFigure } from '../../../document/figures/axes-figure.ts';
import { fieldIn } from '../fields.ts';
import { box, dots, INK } from '../item.ts';
import type { Room } from '../room.ts';
import { KEEP, keepTogether, type Slab, slab, TORN } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { equationLines } from './equation-space.ts';
import { layFigure } from './figure-block.ts';
import { writeOver } from './filled-space.ts';
import { shortLines } from './short-space.ts';
import { layTable } from './table-block.ts';
import { workingBox } from './working-space.ts';

type Handler<K> = (space: Extract<AnswerSpace, { kind: K }>, room: Room, filled?: Filled) => Slab[];
type Spaces = { readonly [K in AnswerSpace['kind']]: Handler<K> };

const SPACES: Spaces = {
  lines: ({ count }, room) => ruledLines(count, room),
  working: workingBox,
  equation: equationLines,
  short: shortLines,
  table: ({ table }, room) => layTable(table, room, { grid: true, rowHeight: room.pen.measures.ruled }),
  grid: layGrid,
  none: () => [],
};

/** Room to answer in, of the kind and height that the answer needs. */
export function layAnswer({ space, filled }: AnswerBlock, room: Room): Slab[] {
  const handler = SPACES[space.kind] as Handler<AnswerSpace['kind']> | undefined;
  if (!handler) throw new Error(`the PDF printer knows no answer space of kind \`${(space as AnswerSpace).kind}\``);
  if (!filled) return keepTogether(handler(space, room), 0);
  if (HOLDS_ANSWER.has(space.kind)) return keepTogether(handler(space, room, filled), 0);
  const bare = handler(space, { ...room, tag: { type: 'Div', kids: [] } });
  return keepTogether(writeOver(bare, space, filled, room), 0);
}

/** Spaces that put an answer into their own gaps; on the others it is written over the rules. */
const HOLDS_ANSWER: ReadonlySet<AnswerSpace['kind']> = new Set(['working', 'short']);

/** Dotted rules, 8.5 mm apart; on a screen one frame, since what is typed keeps to no rules. */
function ruledLines(count: number, room: Room): Slab[] {
  const { ruled, hairline, step } = room.pen.measures;
  if (!room.fields) {
    const mark = addMark(addTag(addTag(room.tag, 'P'), 'Span'), count === 1 ? 'blank line' : `${count} blank lines`);
    return Array.from({ length: count }, (_, i) => {
      // no line is left over for another page
      const tear = i < count - 2 ? { tear: 2 * TORN } : {};
      return slab(ruled, [{ ...dots(room.x, ruled - 1, room.width), mark }], { after: KEEP, ...tear });
    });
  }
  const height = count * ruled;
  const field = fieldIn(room, 'answer', [room.x + 1, 1, room.width - 2, height - 2], count > 1 ? 'several' : 'one');
  return [slab(height, [box(room.x, 0, room.width, height, hairline, INK.rule), ...field], { above: step * 0.6 })];
}

/** A squared grid, as large as its squares or its room, told as a figure. */
function layGrid({ across, down, axes }: Extract<AnswerSpace, { kind: 'grid' }>, room: Room): Slab[] {
  const figure = axes ? axesFigure({ ...axes.x, squares: across }, { ...axes.y, squares: down }) : gridFigure(across, down);
  return layFigure({ kind: 'figure', figure }, room);
}
