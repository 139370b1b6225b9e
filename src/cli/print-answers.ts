import type { Desk } from './desk.ts';

/** Prints what was found for every input: an array of JSON, or texts with an empty line between. */
export function printAnswers<T>(
  found: readonly T[],
  json: boolean,
  desk: Desk,
  write: { readonly answer: (found: T) => unknown; readonly tell: (found: T) => string },
): void {
  if (json) desk.print(JSON.stringify(found.map(write.answer), undefined, 2));
  else desk.print(found.map(write.tell).join('\n\n'));
}
