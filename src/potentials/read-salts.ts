import { composition } from '../chemistry/composition.ts';
import type { Formula } from '../chemistry/formula.ts';
import { parseFormula } from '../chemistry/parse-formula.ts';
import type { Salt } from '../chemistry/species.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { FaultList } from './fault-list.ts';
import { formulaIn, keyIn } from './read-formula.ts';
import { readSheet, type SheetRow } from './sheet.ts';

const COLUMNS = ['formula', 'name', 'gives', 'count', 'with'];

/** The bottled substances, in the order of the file, each with its row for faults found later. */
export function readSalts(file: string, text: string, faults: FaultList): { readonly salt: Salt; readonly row: SheetRow }[] {
  const seen = new Set<string>();
  return readSheet(file, text, { needed: COLUMNS }, faults).flatMap((row) => {
    const salt = toSalt(row);
    if (!salt) return [];
    const key = keyOf(salt.formula);
    if (seen.has(key)) row.fault('doubled-salt', `\`${key}\` stands in \`${file}\` already`);
    seen.add(key);
    checkAdds(row, salt);
    return { salt, row };
  });
}

function toSalt(row: SheetRow): Salt | undefined {
  const formula = formulaIn(row, row.required('formula'));
  const gives = keyIn(row, 'gives');
  const count = countIn(row, row.required('count'));
  const partners = row.list('with').map((part) => partnerIn(row, part));
  const name = row.required('name');
  if (!formula || !gives || !count || partners.includes(undefined)) return undefined;
  return { formula, name, gives, count, with: partners.filter((partner) => partner !== undefined) };
}

function countIn(row: SheetRow, text: string): number | undefined {
  if (/^[1-9]\d?$/.test(text)) return Number(text);
  if (text !== '') row.fault('bad-count', `expected a whole number from 1 to 99, found \`${text}\``);
  return undefined;
}

/** `2 K^+` */
function partnerIn(row: SheetRow, part: string): Salt['with'][number] | undefined {
  const match = /^(?:(\d+)\s+)?(\S.*)$/.exec(part);
  const formula = match && formulaIn(row, match[2]!);
  const count = match?.[1] === undefined ? 1 : countIn(row, match[1]);
  return formula && count ? { key: keyOf(formula), count } : undefined;
}

/** What a salt gives adds up to its formula, water apart (hydrates; Na₂S₂O₅ takes up water). */
function checkAdds(row: SheetRow, salt: Salt): void {
  const left = new Map<string, number>();
  const add = (formula: Formula, times: number): void => {
    for (const [component, count] of composition(formula)) left.set(component, (left.get(component) ?? 0) + count * times);
  };
  add(salt.formula, 1);
  add(parseFormula(salt.gives), -salt.count);
  for (const { key, count } of salt.with) add(parseFormula(key), -count);
  // What oxygen is left over must be water: H2SO4 has none, FeSO4·7H2O seven, Na2S2O5 (two HSO3^-) takes one up.
  const water = left.get('O') ?? 0;
  left.set('O', 0);
  left.set('H', (left.get('H') ?? 0) - 2 * water);
  const off = [...left].filter(([, count]) => count !== 0).map(([component]) => component);
  if (off.length > 0) {
    row.fault('salt-does-not-add-up', `what the salt gives does not add up to its formula: look at ${off.join(', ')}`);
  }
}
