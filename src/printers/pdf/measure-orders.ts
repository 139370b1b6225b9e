import type { Document } from '../../document/document.ts';
import { layBlocks } from './blocks/handlers.ts';
import type { Fonts } from './fonts.ts';
import { frameRoom, turningIn } from './layout.ts';
import { turnsCost } from './paginate.ts';
import { DEFAULT_SETTINGS, type Settings } from './settings.ts';

/**
 * Tells what the turns of a sheet's pages cost when its questions stand in another order. Measured in standard print, since a class with
 * several sizes of print needs one order.
 * @param sheet whose question blocks come one after the other, with nothing between them
 * @returns a function of an order, given as places in the sheet's own; less is better, and nothing is laid out anew
 */
export function measureOrders(
  sheet: Document,
  page: Pick<Settings, 'paper' | 'sides'>,
  fonts: Fonts,
): (order: readonly number[]) => number {
  const room = frameRoom(sheet, { ...DEFAULT_SETTINGS, ...page }, fonts);
  const turning = turningIn(room);
  const before = layBlocks(
    sheet.blocks.filter(({ kind }) => kind !== 'question'),
    room,
  );
  const questions = sheet.blocks.filter(({ kind }) => kind === 'question').map((block) => layBlocks([block], room));
  return (order) => turnsCost([...before, ...order.flatMap((at) => questions[at]!)], turning);
}
