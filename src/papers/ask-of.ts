import type { Ask } from '../questions/family.ts';
import type { Answering, Level } from '../questions/question.ts';
import type { SheetRequest } from './request.ts';

/** What of a request every question must be asked with, whatever its level and way of answering. */
export type AskedOfAll = Pick<SheetRequest, 'units' | 'withoutColourRecall'>;

/** How one question is asked for under a request. */
export function askOf({ units, withoutColourRecall = false }: AskedOfAll, level: Level, answering: Answering): Ask {
  return { level, answering, units, ...(withoutColourRecall ? { withoutColours: true } : {}) };
}
