import type { Wording } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Family } from '../questions/family.ts';
import { gate } from '../questions/gate/gate.ts';
import { makeQuestion, slotOf } from '../questions/make-question.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Level, Question } from '../questions/question.ts';
import { rowsOf } from '../questions/rows.ts';
import { type Warning, warningsOf } from '../questions/warnings.ts';
import { minutesFor } from './minutes.ts';

/** What many questions of one family show, over both levels and every way of answering in turn. */
export interface FamilySample {
  readonly id: string;
  readonly sampled: number;
  /** questions that could not be made, or do not pass the gate */
  readonly failures: readonly { readonly code: string; readonly says: string }[];
  readonly warnings: readonly (Warning & { readonly code: string })[];
  /** different exercises: another combination of couples, species or direction, not only other figures */
  readonly distinct: number;
  /** how often each misconception shows itself */
  readonly misconceptions: Readonly<Record<string, number>>;
  readonly meanMarks: number;
  readonly meanMinutes: number;
}

/** Makes `count` questions of a family and looks them over. */
export function sampleFamily(
  family: Family,
  count: number,
  tables: Tables,
  wording: Wording,
  progress: (done: number) => void = () => {},
): FamilySample {
  const ways = (['core', 'stretch'] as const).flatMap((level) => family.answering.map((answering) => ({ level, answering })));
  const made: Question[] = [];
  const failures: { code: string; says: string }[] = [];
  for (let at = 0; at < count; at += 1) {
    const slot = slotOf('sample', family.id, `s${at + 1}`, 0);
    const ask = { ...ways[at % ways.length]!, units: 'dm' as const };
    try {
      made.push(makeQuestion(family, slot, ask, tables, wording));
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
      failures.push({ code: slot.code, says: error.message });
    }
    progress(at + 1);
  }
  const broken = made.flatMap((question) =>
    gate(question, tables).map(({ rule, problem }) => ({ code: question.code, says: `${rule}: ${problem}` })),
  );
  const marks = made.reduce((sum, question) => sum + itemMarks(question), 0);
  return {
    id: family.id,
    sampled: count,
    failures: [...failures, ...broken],
    warnings: made.flatMap((question) => warningsOf(question).map((warning) => ({ code: question.code, ...warning }))),
    distinct: new Set(made.map(keyOf)).size,
    misconceptions: countMisconceptions(family, made),
    meanMarks: mean(marks, made.length),
    meanMinutes: mean(
      made.reduce((sum, question) => sum + minutesFor(itemMarks(question)), 0),
      made.length,
    ),
  };
}

function keyOf({ identity, level }: { readonly identity: string; readonly level: Level }): string {
  return `${level} ${identity}`;
}

function countMisconceptions(family: Family, made: readonly Question[]): Record<string, number> {
  const counts = new Map(family.misconceptions.map((id) => [id, 0]));
  for (const id of made.flatMap(rowsOf).flatMap(({ slip, aliases }) => [slip, ...aliases]))
    counts.set(id, (counts.get(id) ?? 0) + 1);
  return Object.fromEntries(counts);
}

/** To one decimal; zero of nothing. */
function mean(sum: number, count: number): number {
  return count === 0 ? 0 : Math.round((sum / count) * 10) / 10;
}
