import type { Hazard } from '../chemistry/species.ts';
import type { FaultList } from './fault-list.ts';
import type { Told } from './read-facts.ts';
import { keysIn } from './read-formula.ts';
import { readSheet, type SheetRow } from './sheet.ts';

const COLUMNS = ['substance', 'keys', 'form', 'from', 'below', 'signal', 'statements', 'caution', 'source', 'from memory'];
const FORMS = ['solid', 'solution', 'liquid', 'gas', 'powder'] as const;
const SIGNALS = ['Danger', 'Warning', 'none'] as const;
/** Hazard statements that come without a signal word (CLP, Annex I: aquatic chronic 3 and 4). */
const WITHOUT_SIGNAL = ['H412', 'H413'];
const LONGEST_CAUTION = 140;

/** The hazards rows, each with the row of its file for faults found later. */
export function readHazards(file: string, text: string, faults: FaultList): Told<Hazard>[] {
  return readSheet(file, text, { needed: COLUMNS }, faults).flatMap((row) => {
    const fact = toHazard(row);
    return fact ? { fact, row } : [];
  });
}

function toHazard(row: SheetRow): Hazard | undefined {
  row.required('keys');
  const form = row.oneOf('form', FORMS);
  const signal = row.oneOf('signal', SIGNALS);
  const [from, below] = [bandIn(row, 'from'), bandIn(row, 'below')];
  const statements = row
    .text('statements')
    .split(/\s+/)
    .filter((code) => code !== '');
  if (!form || !signal) return undefined;
  const hazard: Hazard = {
    substance: row.required('substance'),
    keys: keysIn(row, 'keys'),
    form,
    ...(from === undefined ? {} : { from }),
    ...(below === undefined ? {} : { below }),
    signal,
    statements,
    caution: row.required('caution'),
    source: row.required('source'),
    fromMemory: row.yes('from memory'),
  };
  checkHazard(row, hazard);
  return hazard;
}

/** A concentration in mol dm⁻³, or nothing. */
function bandIn(row: SheetRow, column: string): number | undefined {
  const text = row.text(column);
  if (text === '') return undefined;
  if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
  row.fault('not-a-number', `expected a concentration in mol/dm3 in column \`${column}\`, found \`${text}\``);
  return undefined;
}

function checkHazard(row: SheetRow, { form, from, below, signal, statements, caution }: Hazard): void {
  for (const code of statements) {
    if (!/^(H[234]\d\d(i|FD|Fd|fd|Df|D|F|f|d)?|EUH\d{3})$/.test(code))
      row.fault('bad-statement', `expected a hazard statement such as \`H302\`, found \`${code}\``);
  }
  if (form !== 'solution' && (from !== undefined || below !== undefined))
    row.fault('bad-band', 'only a solution has a band of concentration');
  if (from !== undefined && below !== undefined && from >= below)
    row.fault('bad-band', `expected a band that ends above ${from} mol/dm3, found ${below}`);
  const needsSignal = statements.some((code) => !WITHOUT_SIGNAL.includes(code));
  if (needsSignal !== (signal !== 'none')) row.fault('signal', 'a signal word stands with hazard statements, and not without');
  if (caution.length > LONGEST_CAUTION)
    row.fault('long-caution', `a caution is one line of at most ${LONGEST_CAUTION} characters, found ${caution.length}`);
}
