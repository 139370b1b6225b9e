import { EXTRA_NAMES } from './extra-names.ts';
import type { Look } from './make-set.ts';
import type { Given } from './options.ts';
import { pageSettings } from './page-settings.ts';

/** Options that say how a set looks, in the order in which help shows them. */
export const LOOK_OPTIONS = [
  'data',
  'teacher',
  'solutions',
  'key',
  'feedback',
  'print',
  'sides',
  'tint',
  'fillable',
  'page',
] as const;

/** How a set looks, and what is made beside the two sheets. */
export function lookOf(given: Given<(typeof LOOK_OPTIONS)[number]>): Look {
  return { page: pageSettings(given), extras: EXTRA_NAMES.filter((name) => given[name]) };
}
