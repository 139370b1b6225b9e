import type { Answers, Slip } from '../engine/case.ts';
import { acceptedRange, changedBy, shown, worked } from '../engine/chain.ts';
import { difference, marksIn } from '../engine/marks.ts';
import { rounded } from '../exact/rounding.ts';
import type { ReadRow, ReadScheme } from '../reading/scheme.ts';
import { type Audited, at, partsOfSteps } from './place.ts';
import { saysSlip } from './said.ts';

/** One slip followed through the question by the auditor: what would be on paper in each part, and what it would earn there. */
interface Followed {
  readonly slip: Slip;
  readonly answers: Answers;
  /** letter of the part in which it is made */
  readonly from: string;
  readonly seen: ReadonlyMap<string, { readonly marks: readonly string[]; readonly earned: number; readonly of: number }>;
}

/** Each "if you see this" line: the figure is what its slip gives, the marks are what the points leave, and it is told in every part it reaches. */
export function auditRows(asPrinted: Audited): void {
  const followed = asPrinted.asked.slips.map((slip) => follow(asPrinted, slip));
  const apart = (row: ReadRow) => byOrigin(row, followed);
  const blocks = asPrinted.blocks.map((block) => ({ ...block, rows: block.rows.flatMap(apart) }));
  const audited = { ...asPrinted, blocks };
  for (const block of blocks) {
    for (const row of block.rows) auditRow(audited, block, row, followed);
    lookAlikes(audited, block);
  }
}

/** A row that is carried on from one part or another, as a row for each; a part that none of its slips is made in keeps no slip. */
function byOrigin(row: ReadRow, followed: readonly Followed[]): ReadRow[] {
  const [, opening = '', letters = ''] = /^(.*\bfrom part )([a-z](?: or [a-z])+)/.exec(row.happened) ?? [];
  if (letters === '') return [row];
  const madeIn = (letter: string) => (id: string) => followed.some(({ slip, from }) => slip.id === id && from === letter);
  const parts = letters.split(' or ').map((letter) => ({
    ...row,
    slips: row.slips.filter(madeIn(letter)),
    happened: `${opening}${letter}${row.happened.slice(opening.length + letters.length)}`,
  }));
  const stray = row.slips.filter((id) => !letters.split(' or ').some((letter) => madeIn(letter)(id)));
  return stray.length > 0 ? [...parts, { ...row, slips: stray }] : parts;
}

function follow(audited: Audited, slip: Slip): Followed {
  const { asked, right, blocks } = audited;
  const parts = partsOfSteps(audited);
  const answers = worked(asked.nodes, slip);
  const changed = changedBy(asked, right, answers);
  const seen = new Map<string, { marks: string[]; earned: number; of: number }>();
  for (const { letter, roles, points } of blocks) {
    const own = asked.nodes.filter(({ id }) => changed.has(id) && parts.get(id) === letter);
    const answered = own.filter(({ id }) => roles.includes(id));
    const beside = answered.some(({ id }) => asked.together?.includes(id))
      ? asked.nodes.filter(({ id }) => asked.together!.includes(id) && roles.includes(id))
      : answered;
    const written = (beside.length > 0 ? beside : own).sort((a, b) => roles.indexOf(a.id) - roles.indexOf(b.id));
    if (written.length === 0) continue;
    const marks = written.flatMap((node) => shown(node, answers.get(node.id)!));
    const earned = points.filter(
      ({ step, carries }) => step !== slip.at && !slip.skips?.includes(step) && (!changed.has(step) || carries),
    ).length;
    seen.set(letter, { marks, earned, of: points.length });
  }
  return { slip, answers, from: parts.get(slip.at) ?? '', seen };
}

function auditRow(audited: Audited, block: ReadScheme, row: ReadRow, all: readonly Followed[]): void {
  const { ledger, asked } = audited;
  const place = at(audited, block.label);
  const carriedFrom = /carried (?:on )?from part ([a-z])/.exec(row.happened)?.[1];
  const from = carriedFrom ?? block.letter;
  const [id = ''] = row.slips;
  const told = marksIn(row.told, { numbers: true });
  const named = all.filter(({ slip, from: part }) => slip.id === id && part === from);
  // Several slips of one kind in one part are told apart by the species that the words name.
  const telling = named.filter(({ slip }) => carriedFrom !== undefined || difference(slip.tells ?? [], told) === undefined);
  const candidates = telling.length > 0 ? telling : named;
  if (candidates.length === 0) {
    ledger.note(place, 'figure of a row', { unreached: `no arithmetic known for ${id} in this question` });
    ledger.note(place, 'marks of a row', { unreached: `no arithmetic known for ${id} in this question` });
    return;
  }
  const found = marksIn(row.wrote, asked.vocabulary);
  const fitting = candidates.find(({ seen }) => difference(seen.get(block.letter)?.marks ?? [], found) === undefined);
  const one = fitting ?? candidates[0]!;
  const seen = one.seen.get(block.letter);
  ledger.noteAll(place, 'figure of a row', [
    ...(fitting ? [] : [`${id}: ${difference(seen?.marks ?? [], found)}`]),
    ...(carriedFrom === undefined && !saysSlip(id, row.happened) ? [`${id} is told as "${row.happened}"`] : []),
    ...(telling.length > 0 ? [] : [`${id} is told with ${told.join(' ') || 'nothing'}: "${row.happened}"`]),
    ...aliasProblems(row, one, all, carriedFrom === undefined ? undefined : block.letter),
    ...acceptedAfterAll(audited, one),
  ]);
  ledger.noteAll(place, 'marks of a row', marksProblems(audited, row, one, block, carriedFrom !== undefined));
}

/**
 * Aliases are other ways to the same wrong figure: wherever they are made, in every part; where they are carried on, in this one.
 * @param letter of the part that a row is carried on to
 */
function aliasProblems({ slips }: ReadRow, one: Followed, all: readonly Followed[], letter: string | undefined): string[] {
  const told = ({ seen }: Followed) =>
    [...seen].flatMap(([part, { marks, earned }]) =>
      letter === undefined || part === letter ? [`${part}: ${marks.join(' ')} ${earned}`] : [],
    );
  return slips.slice(1).flatMap((alias) => {
    const twins = all.filter(
      (each) => each.slip.id === alias && (letter === undefined ? each.slip.at === one.slip.at : each.from === one.from),
    );
    if (twins.length === 0) return [`no arithmetic known for ${alias}, an alias of ${one.slip.id}`];
    return twins.some((twin) => told(twin).join('; ') === told(one).join('; '))
      ? []
      : [`${alias} does not give what ${one.slip.id} gives`];
  });
}

/** No figure of a row may be one that is accepted as right. */
function acceptedAfterAll({ asked }: Audited, { slip, answers }: Followed): string[] {
  return asked.nodes.flatMap((node) => {
    const answer = answers.get(node.id)!;
    const range = node.id === slip.at ? acceptedRange(asked.nodes, node.id) : undefined;
    if (!range || answer.kind !== 'number') return [];
    const figure = rounded(answer.value, node.figures);
    return figure.compare(range.least) >= 0 && figure.compare(range.most) <= 0
      ? [`${slip.id} gives ${figure}, which is accepted as right`]
      : [];
  });
}

function marksProblems(audited: Audited, row: ReadRow, one: Followed, block: ReadScheme, isCarried: boolean): string[] {
  const [, earned, of, onward = ''] = /^(\d+) of (\d+)(?:; goes on in ([a-z, ]+))?$/.exec(row.earns) ?? [];
  if (earned === undefined) return [`cannot read the marks "${row.earns}"`];
  const expected = one.seen.get(block.letter);
  const reached = isCarried ? [] : [...one.seen.keys()].filter((letter) => letter !== block.letter);
  const untold = reached.filter(
    (letter) => !audited.blocks.some((other) => other.letter === letter && tells(other, row, block.letter)),
  );
  return [
    ...(Number(earned) === expected?.earned ? [] : [`${one.slip.id} earns ${expected?.earned}, the row says ${earned}`]),
    ...(Number(of) === expected?.of ? [] : [`the part has ${expected?.of} marks, the row says ${of}`]),
    ...(onward === reached.join(', ')
      ? []
      : [`${one.slip.id} goes on in ${reached.join(', ') || 'no part'}, the row says ${onward || 'none'}`]),
    ...untold.map((letter) => `${one.slip.id} goes on in ${letter} and is not told there`),
  ];
}

const tells = ({ rows }: ReadScheme, row: ReadRow, from: string): boolean =>
  rows.some(({ slips, happened }) => slips.includes(row.slips[0] ?? '') && happened.includes(`from part ${from}`));

/** Two rows of one part that look alike to a marker, come from the same part and earn differently cannot both be followed. */
function lookAlikes(audited: Audited, block: ReadScheme): void {
  const seen = new Map<string, ReadRow>();
  for (const row of block.rows) {
    const origin = /carried (?:on )?from part [a-z]/.exec(row.happened)?.[0] ?? 'here';
    const key = `${origin}: ${row.wroteText}`;
    const other = seen.get(key);
    const [one, two] = [other?.earns.split(';')[0], row.earns.split(';')[0]];
    if (other && one !== two) {
      audited.ledger.note(at(audited, block.label), 'rows that look alike', {
        problem: `"${row.wroteText}" earns ${one} as ${other.slips[0]} and ${two} as ${row.slips[0]}`,
      });
    }
    seen.set(key, row);
  }
}
