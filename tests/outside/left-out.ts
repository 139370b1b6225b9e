import { readFileSync } from 'node:fs';
import { casesOf, type WorkedCase } from './cases.ts';

/** A case, or a whole kind of cases, that no check uses, and why. */
export interface LeftOut {
  readonly id?: string;
  readonly kind: string;
  readonly reason: string;
  /** where the case is published, as the case itself says; absent for a whole kind, of which no case is held */
  readonly source?: string;
}

export const leftOut: readonly LeftOut[] = JSON.parse(readFileSync(new URL('left-out.json', import.meta.url), 'utf8'));
const ids = new Set(leftOut.map((each) => each.id));

/** The cases of a kind that are checked: all but those left out. */
export function checkedCases<Given, Answer>(kind: string): WorkedCase<Given, Answer>[] {
  return casesOf<Given, Answer>(kind).filter((each) => !ids.has(each.id));
}
