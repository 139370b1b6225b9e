import type { Ledger, Place } from '../engine/ledger.ts';
import type { ReadMarkScheme } from '../reading/scheme.ts';
import type { ReadSheet } from '../reading/sheet.ts';

/** Marks that a pupil can earn: points that the sheet's support does not print. */
export const earnable = ({ blocks, support }: ReadMarkScheme, question: number, letter?: string): number =>
  blocks
    .filter((block) => block.question === question && (letter === undefined || block.letter === letter))
    .reduce((sum, { points }) => sum + points.filter(({ given }) => !given.includes(support)).length, 0);

/** Marks of parts, questions and paper, minutes, and that both documents are about the same questions. */
export function auditTotals(ledger: Ledger, place: Place, sheet: ReadSheet, scheme: ReadMarkScheme): void {
  const is = (what: string, found: string | undefined, expected: string | undefined) =>
    ledger.note(
      place,
      'totals and time',
      found === expected ? 'holds' : { problem: `${what}: expected ${expected ?? 'nothing'}, found ${found ?? 'nothing'}` },
    );
  const marksIn = (facts: readonly string[]) => facts.find((fact) => /^\d+ marks?$/.test(fact));
  const timeIn = (facts: readonly string[]) => facts.find((fact) => /minutes/.test(fact));
  const total = sheet.questions.reduce((sum, { number }) => sum + earnable(scheme, number), 0);
  const points = scheme.blocks.flatMap((block) => block.points);
  is('head of the sheet', marksIn(sheet.facts), `${total} marks`);
  is('time on the sheet', timeIn(sheet.facts), timeFor(total));
  is(
    'cell of the sheet',
    sheet.cells.find((cell) => cell.startsWith('Marks')),
    `Marks / ${total}`,
  );
  is('head of the scheme', marksIn(scheme.facts), `${points.length} marks`);
  is('time in the scheme', timeIn(scheme.facts), timeFor(points.length));
  is('strip', scheme.strip.get('Marks'), String(points.length));
  const left = points.filter(({ given }) => !given.includes('completion')).length;
  is('completion copy', scheme.strip.get('Completion copy'), left < points.length ? String(left) : undefined);
  is('time in the strip', scheme.strip.get('Time'), timeFor(points.length));
  for (const question of sheet.questions) questionTotals(question, scheme, is);
  for (const { label, marks, points: own } of scheme.blocks) is(`scheme ${label}`, String(marks), String(own.length));
  const labels = sheet.questions.flatMap(({ number, parts }) => parts.map(({ letter }) => `${number}${letter}`));
  is('headings of the scheme', scheme.headings.join(' '), sheet.questions.map(({ number }) => number).join(' '));
  is('parts of the scheme', scheme.blocks.map(({ label }) => label).join(' '), labels.join(' '));
}

function questionTotals(
  { number, marks, parts, code }: ReadSheet['questions'][number],
  scheme: ReadMarkScheme,
  is: (what: string, found: string | undefined, expected: string | undefined) => void,
): void {
  is(`question ${number}`, String(marks), String(parts.reduce((sum, part) => sum + part.marks, 0)));
  is(`code of question ${number}`, scheme.codes.get(number)?.code, code);
  for (const { letter, marks: own, spaceMarks } of parts) {
    is(`part ${number}${letter}`, String(own), String(earnable(scheme, number, letter)));
    const whole = scheme.blocks.find((block) => block.question === number && block.letter === letter)?.points.length;
    if (spaceMarks !== undefined) is(`working box of ${number}${letter}`, String(spaceMarks), String(whole));
  }
}

/** Time for a number of marks: 1.2 minutes each and a quarter more, both in whole minutes, rounded up. */
function timeFor(marks: number): string {
  const minutes = Math.ceil((marks * 12) / 10);
  return `${minutes} minutes (${Math.ceil((minutes * 5) / 4)} with extra time)`;
}

/** "What this sheet can show you" names each misconception with the parts whose rows show it, no more and no less. */
export function auditReveals(ledger: Ledger, place: Place, scheme: ReadMarkScheme): void {
  const shown = new Map<string, Set<string>>();
  for (const { rows, label } of scheme.blocks) {
    for (const { slips, happened } of rows) {
      if (/carried (?:on )?from part/.test(happened)) continue;
      for (const id of slips) shown.set(id, (shown.get(id) ?? new Set()).add(label));
    }
  }
  const inWords = (labels: Iterable<string>) => [...labels].sort().join(' ');
  const expected = [...shown.values()].map(inWords).sort();
  const found = scheme.reveals.map(({ parts }) => inWords(parts)).sort();
  const same =
    expected.join('; ') === found.join('; ') && new Set(scheme.reveals.map(({ name }) => name)).size === scheme.reveals.length;
  ledger.note(
    place,
    'what the sheet can show',
    same ? 'holds' : { problem: `expected parts ${expected.join('; ')}, found ${found.join('; ')}` },
  );
}

/** A question whose cautions stand at the head of the sheet. */
const REFERS = /^Caution See the head of this sheet: (.+)\.$/;

/** Each caution that pupils read stands in the staff's list with its source, and each line of that list in some caution. */
export function auditHazards(ledger: Ledger, place: Place, sheet: ReadSheet, scheme: ReadMarkScheme): void {
  const own = sheet.questions.map(({ caution }) => caution).filter((each) => each !== '');
  const named = own.flatMap((each) => (REFERS.exec(each)?.[1] ?? '').split(/, | and /).filter(Boolean));
  const cautions = [sheet.caution, ...own.filter((each) => !REFERS.test(each))].filter((each) => each !== '');
  const known = (name: string) => sheet.caution.toLowerCase().includes(` ${name.toLowerCase()}: `);
  const lines = scheme.hazards.map(
    (line) => /^.*? (?:(?:Danger|Warning)(?: \([^)]*\))?\. )?(?<told>[A-Z].*?) Source: .+\.$/.exec(line)?.groups?.told ?? '',
  );
  const untold = scheme.hazards.filter((_, at) => lines[at] === '' || !cautions.some((caution) => caution.includes(lines[at]!)));
  const rest = cautions.map((caution) =>
    lines.reduce((left, line) => left.replace(line, ''), caution.replace(/^Caution /, '')).trim(),
  );
  ledger.noteAll(place, 'hazards and cautions', [
    ...untold.map((line) => `"${line}" stands in no caution of the sheet`),
    ...named.filter((name) => !known(name)).map((name) => `a question refers to ${name}, of which the sheet says nothing`),
    ...(sheet.caution !== '' && named.length === 0
      ? ['cautions stand at the head of the sheet to which no question refers']
      : []),
    ...rest
      .filter((each) => !/^This is written work: before any practical work, follow .*risk assessment\.$/.test(each))
      .map((each) => `no hazard line for "${each}"`),
  ]);
}
