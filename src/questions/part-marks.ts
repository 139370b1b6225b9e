import type { Item, Part } from './question.ts';

/** Marks of a part: one for each creditable point. */
export const partMarks = (part: Part): number => part.points.length;

/** Marks of a whole question. */
export const itemMarks = (item: Pick<Item, 'parts'>): number => item.parts.reduce((sum, part) => sum + partMarks(part), 0);
