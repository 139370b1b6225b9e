import type { Block, SchemeBlock, SchemePoint, SchemeSeen } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { joined, text } from '../document/inlines.ts';
import type { Words } from '../document/words.ts';
import { acceptedRange } from '../questions/accepted-range.ts';
import { partMarks } from '../questions/part-marks.ts';
import { present } from '../questions/present.ts';
import { type PrintedRow, printedRows } from '../questions/printed-rows.ts';
import type { MisconceptionId, Part, Point, PointId, Question } from '../questions/question.ts';
import { earnedIn } from '../questions/rows.ts';
import { showNumber, showValue } from '../questions/show-value.ts';
import { solve } from '../questions/solve.ts';
import type { Values } from '../questions/value.ts';
import { optionLetter } from './option-letter.ts';
import { partLetter } from './question-sheet.ts';

/** One block of the scheme for each part of a question. */
export function schemeBlocks(question: Question, number: number, words: Words, on?: MisconceptionId): SchemeBlock[] {
  const values = solve(question, 'printed');
  const rows = printedRows(question);
  const completed = new Set(present(question, 'completion', on).flatMap(({ given }) => [...given]));
  return question.parts.map((part, at) => ({
    kind: 'scheme',
    label: `${number}${partLetter(question, at) ?? ''}`,
    marks: partMarks(part),
    answer: answersOf(question, part, values, words),
    roles: part.answers,
    points: part.points.map((point) => schemePoint(point, completed)),
    worked: workedOf(question, part, values),
    seen: merged(rows.flatMap((row) => seenIn(question, part, row, words) ?? [])).map((line) => tellSeen(line, words)),
  }));
}

function answersOf(question: Question, part: Part, values: Values, words: Words): Inline[][] {
  return part.answers.map((id) => {
    const step = question.steps.find((each) => each.id === id)!;
    const value = values.get(id)!;
    const letter = part.options?.findIndex(({ slip }) => slip === undefined);
    const shown = [
      ...(letter === undefined ? [] : [text(`${optionLetter(letter)}\u00a0\u00a0`)]),
      ...showValue(value, step.printed, id),
    ];
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

/** A line of what may be seen, before it is said where it came from. */
interface SeenLine {
  readonly slips: readonly MisconceptionId[];
  readonly wrote: readonly Inline[];
  readonly earns: readonly Inline[];
  /** what has happened, told in the part where it was made; else the letters of the parts that it is carried on from */
  readonly origin: { readonly happened: readonly Inline[] } | { readonly letters: readonly string[]; readonly full: boolean };
}

/** Lines that read alike are one: two slips of earlier parts may end in the same sentence here. */
function merged(lines: readonly SeenLine[]): SeenLine[] {
  const found = new Map<string, SeenLine>();
  for (const line of lines) {
    const { origin } = line;
    const key = JSON.stringify([line.wrote, line.earns, 'letters' in origin ? 'carried' : origin.happened]);
    const same = found.get(key);
    found.set(key, same ? { ...same, slips: [...same.slips, ...line.slips], origin: bothOrigins(same.origin, origin) } : line);
  }
  return [...found.values()];
}

function bothOrigins(one: SeenLine['origin'], other: SeenLine['origin']): SeenLine['origin'] {
  if (!('letters' in one && 'letters' in other)) return one;
  return { ...one, letters: [...new Set([...one.letters, ...other.letters])].sort() };
}

function tellSeen({ slips, wrote, earns, origin }: SeenLine, words: Words): SchemeSeen {
  const happened =
    'happened' in origin
      ? origin.happened
      : words.inline('carried-from', { letter: origin.letters.join(' or '), full: origin.full });
  return { slips, wrote, happened, earns };
}

/** How a row looks in one part: what is seen there, where it came from, and what it earns; nothing where it leaves no trace. */
function seenIn(question: Question, part: Part, { row, option }: PrintedRow, words: Words): SeenLine | undefined {
  const seen = row.seen.get(part.id);
  if (!seen) return undefined;
  const from = question.steps.find(({ id }) => id === row.at)!.part;
  const earned = { earned: earnedIn(row, part), marks: partMarks(part) };
  const line = {
    slips: [row.slip, ...row.aliases],
    wrote: [
      ...(option === undefined ? [] : [text(`${optionLetter(option)}\u00a0\u00a0`)]),
      ...joined(
        seen.map(({ content }) => content),
        '; ',
      ),
    ],
  };
  const letter = (id: string): string =>
    partLetter(
      question,
      question.parts.findIndex((each) => each.id === id),
    ) ?? '';
  if (from !== part.id)
    return {
      ...line,
      earns: words.inline('earns', { ...earned, onward: '', goesOn: false }),
      origin: { letters: [letter(from)], full: earned.earned === earned.marks },
    };
  const onward = question.parts.filter(({ id }) => id !== part.id && row.seen.has(id)).map(({ id }) => letter(id));
  return {
    ...line,
    earns: words.inline('earns', { ...earned, onward: onward.join(', '), goesOn: onward.length > 0 }),
    origin: { happened: row.happened },
  };
}
