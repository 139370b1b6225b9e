import type { Block, SchemeBlock, SchemePoint, SchemeSeen } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { joined, text } from '../document/inlines.ts';
import type { Words } from '../document/words.ts';
import { acceptedRange } from '../questions/accepted-range.ts';
import { partMarks } from '../questions/part-marks.ts';
import { present } from '../questions/present.ts';
import type { MisconceptionId, Part, Point, PointId, Question, Row } from '../questions/question.ts';
import { earnedIn, rowsOf } from '../questions/rows.ts';
import { showNumber, showValue } from '../questions/show-value.ts';
import { solve } from '../questions/solve.ts';
import type { Values } from '../questions/value.ts';
import { partLetter } from './question-sheet.ts';

/** One block of the scheme for each part of a question. */
export function schemeBlocks(question: Question, number: number, words: Words, on?: MisconceptionId): SchemeBlock[] {
  const values = solve(question, 'printed');
  const rows = rowsOf(question);
  const completed = new Set(present(question, 'completion', on).flatMap(({ given }) => [...given]));
  return question.parts.map((part, at) => ({
    kind: 'scheme',
    label: `${number}${partLetter(question, at) ?? ''}`,
    marks: partMarks(part),
    answer: answersOf(question, part, values, words),
    roles: part.answers,
    points: part.points.map((point) => schemePoint(point, completed)),
    worked: workedOf(question, part, values),
    seen: merged(rows.flatMap((row) => seenIn(question, part, row, words))),
  }));
}

function answersOf(question: Question, part: Part, values: Values, words: Words): Inline[][] {
  return part.answers.map((id) => {
    const step = question.steps.find((each) => each.id === id)!;
    const value = values.get(id)!;
    const letter = part.options?.findIndex(({ slip }) => slip === undefined);
    const shown = [...(letter === undefined ? [] : [text(`${'ABCDEFGH'[letter]}  `)]), ...showValue(value, step.printed, id)];
    if (value.kind !== 'number' || step.printed === 'exact' || part.options) return shown;
    const { least, most } = acceptedRange(question, id);
    if (least.equals(most)) return shown;
    const [from, to] = [showNumber(least, step.printed, value.signed), showNumber(most, step.printed, value.signed)];
    return [
      ...shown,
      text(' '),
      ...words.inline('accepted-range', {
        from: { kind: 'quantity', number: from, unit: '' },
        to: { kind: 'quantity', number: to, unit: '' },
      }),
    ];
  });
}

function schemePoint({ id, accept, refuse, ignore, carries }: Point, completed: ReadonlySet<PointId>): SchemePoint {
  const [earns, ...also] = accept;
  const given = completed.has(id) ? { given: ['completion'] } : {};
  return { role: id, earns: earns ?? [], also, not: refuse, ignore, carries, ...given };
}

/** The worked lines of a part, computed from figures as they are printed. */
function workedOf(question: Question, part: Part, values: Values): Block[] {
  const lines = question.steps.flatMap((step) => (step.part === part.id && step.line ? [step.line(values)] : []));
  return lines.length === 0 ? [] : [{ kind: 'working', lines }];
}

/** Lines that read alike are one: two slips of an earlier part may end in the same sentence here. */
function merged(lines: readonly SchemeSeen[]): SchemeSeen[] {
  const found = new Map<string, SchemeSeen>();
  for (const line of lines) {
    const key = JSON.stringify([line.wrote, line.happened, line.earns]);
    const same = found.get(key);
    found.set(key, same ? { ...same, slips: [...(same.slips ?? []), ...(line.slips ?? [])] } : line);
  }
  return [...found.values()];
}

/** How a row looks in one part: what is seen there, where it came from, and what it earns. */
function seenIn(question: Question, part: Part, row: Row, words: Words): SchemeSeen[] {
  const seen = row.seen.get(part.id);
  if (!seen) return [];
  const from = question.steps.find(({ id }) => id === row.at)!.part;
  const slips = [row.slip, ...row.aliases];
  const earned = { earned: earnedIn(row, part), marks: partMarks(part) };
  const wrote = joined(
    seen.map(({ content }) => content),
    '; ',
  );
  if (from !== part.id) {
    const letter =
      partLetter(
        question,
        question.parts.findIndex(({ id }) => id === from),
      ) ?? '';
    return [
      {
        slips,
        wrote,
        happened: words.inline('carried-from', { letter, full: earned.earned === earned.marks }),
        earns: words.inline('earns', { ...earned, onward: '', goesOn: false }),
      },
    ];
  }
  const onward = question.parts
    .filter(({ id }) => id !== part.id && row.seen.has(id))
    .map((each) => partLetter(question, question.parts.indexOf(each))!);
  return [
    {
      slips,
      wrote,
      happened: row.happened,
      earns: words.inline('earns', { ...earned, onward: onward.join(', '), goesOn: onward.length > 0 }),
    },
  ];
}
