import type { Item, Part, PointId, Row, SeenValue, Slip, Step } from './question.ts';
import { sameValue } from './same-value.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';
import type { NodeId, Value, Values } from './value.ts';

/**
 * The "if you see this" rows of an item: each slip that applies, followed through every later step with right work. The slip's own
 * step loses its points, and so do steps it skips; a later point stands when its step's value is unchanged or when the point carries on. Slips that change
 * nothing printed are dropped; slips that look alike are one row, the later ones its aliases.
 */
export function rowsOf(item: Item): Row[] {
  const right = solve(item);
  const rows: { row: Row; values: Values }[] = [];
  for (const slip of item.slips) {
    if (!slip.applies(right)) continue;
    const values = solve(item, 'full', slip);
    const changed = item.steps.filter((step) => differs(step, right, values));
    if (!changed.some(({ id }) => id === slip.at)) continue;
    const twin = rows.find(
      ({ row, values: other }) => row.at === slip.at && item.steps.every((step) => !differs(step, other, values)),
    );
    if (twin) {
      twin.row = { ...twin.row, aliases: [...twin.row.aliases, slip.id] };
      continue;
    }
    const row = rowOf(item, slip, changed, values);
    // What costs no mark and changes no answer (an equation on the way to a choice) is nothing to look out for.
    if ([...row.earns.values()].includes(0)) rows.push({ row, values });
  }
  return rows.map(({ row }) => row);
}

function differs(step: Step, right: Values, values: Values): boolean {
  return !sameValue(right.get(step.id)!, values.get(step.id)!, step.printed);
}

function rowOf(item: Item, slip: Slip, changed: readonly Step[], values: Values): Row {
  const changedIds = new Set(changed.map(({ id }) => id));
  const seen = new Map(
    item.parts.flatMap((part) => {
      const shown = seenIn(part, item.steps, changed, values);
      return shown.length > 0 ? [[part.id, shown] as const] : [];
    }),
  );
  return {
    slip: slip.id,
    aliases: [],
    at: slip.at,
    happened: slip.happened,
    feedback: slip.feedback,
    seen,
    earns: earnings(item, slip, changedIds),
  };
}

/** What stands in a part of a pupil's answer: its answers where they differ (all of those that stand together), or else the steps on the way. */
function seenIn(part: Part, all: readonly Step[], changed: readonly Step[], values: Values): SeenValue[] {
  const own = changed.filter((step) => step.part === part.id);
  const answers = own.filter(({ id }) => part.answers.includes(id));
  const written = part.together && answers.length > 0 ? all.filter(({ id }) => part.answers.includes(id)) : answers;
  const shown = (written.length > 0 ? written : own).filter((step, at, shownAll) => {
    // One sentence may stand for several steps: it is printed once.
    const same = (other: Step) =>
      values.get(other.id)!.kind === 'words' && sameValue(values.get(other.id)!, values.get(step.id)!, 'exact');
    return !shownAll.slice(0, at).some(same);
  });
  return shown.map((step) => {
    const value: Value = values.get(step.id)!;
    return { step: step.id, value, content: showValue(value, step.printed, `seen:${step.id}`) };
  });
}

function earnings(item: Item, { at, skips = [] }: Slip, changed: ReadonlySet<NodeId>): Map<PointId, 0 | 1> {
  const points = item.parts.flatMap((part) => part.points);
  const isLost = (step: NodeId) => step === at || skips.includes(step);
  return new Map(points.map(({ id, step, carries }) => [id, isLost(step) ? 0 : !changed.has(step) || carries ? 1 : 0]));
}

/** Marks that a row earns in a part, out of how many. */
export function earnedIn(row: Row, part: Part): number {
  return part.points.reduce((sum, { id }) => sum + (row.earns.get(id) ?? 0), 0);
}
