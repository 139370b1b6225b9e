import type { Answers, Case } from '../engine/case.ts';
import type { Ledger, Place } from '../engine/ledger.ts';
import type { ReadScheme } from '../reading/scheme.ts';
import type { ReadQuestion } from '../reading/sheet.ts';

/** One question under audit, with everything its checks share. */
export interface Audited {
  readonly ledger: Ledger;
  readonly place: Place;
  readonly question: ReadQuestion;
  readonly blocks: readonly ReadScheme[];
  readonly asked: Case;
  /** support of the sheet: what it prints for the pupil is not the pupil's to earn */
  readonly support: string;
  readonly right: Answers;
  /** the same with figures on the way rounded as the working prints them */
  readonly printed: Answers;
}

export const at = ({ place }: Pick<Audited, 'place'>, label: string): Place => ({ ...place, label });

/** The part, by its letter, in which a step stands: where it is marked, answered or worked; else that of the first step that needs it. */
export function partsOfSteps({ blocks, asked }: Pick<Audited, 'blocks' | 'asked'>): Map<string, string> {
  const parts = new Map<string, string>();
  for (const { letter, points, roles, worked } of blocks) {
    const lines = worked.map(({ right }) => lastRole(right));
    for (const step of [...roles, ...points.map((point) => point.step), ...lines]) {
      if (step !== undefined && !parts.has(step)) parts.set(step, letter);
    }
  }
  for (const { id } of [...asked.nodes].reverse()) {
    const user = asked.nodes.find(({ id: other, needs }) => needs.includes(id) && parts.has(other));
    if (!parts.has(id) && user) parts.set(id, parts.get(user.id)!);
  }
  return parts;
}

/** The role of the figure that ends a line. */
export function lastRole(tokens: ReadScheme['worked'][number]['right']): string | undefined {
  const last = tokens.at(-1);
  return last && 'role' in last ? last.role : undefined;
}
