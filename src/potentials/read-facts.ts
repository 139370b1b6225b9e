import type { Bystander, Condition, Facts, PairFact, Restriction, Speciation } from '../chemistry/facts.ts';
import { Rational } from '../exact/rational.ts';
import { keyIn, keysIn } from './read-formula.ts';
import type { SheetRow } from './sheet.ts';
import { CONDITIONS, MEDIA } from './vocabulary.ts';

const ROLES = ['oxidant', 'reductant'] as const;
const VERDICTS = ['conditional', 'not-observed', 'passive', 'precipitates', 'slow'] as const;

/** Files that `Facts` are read from, with their columns. */
export const FACT_COLUMNS = {
  'pair-facts.csv': ['oxidant', 'reductant', 'media', 'verdict', 'needs', 'because', 'source'],
  'restrictions.csv': ['couple', 'as', 'partners', 'media', 'needs', 'because', 'source'],
  'bystanders.csv': ['species', 'as', 'unless named', 'because', 'source'],
  'speciations.csv': ['species', 'medium', 'becomes', 'count', 'source'],
} as const;

/** A fact with the row it was read from, for faults found later. */
export interface Told<T> {
  readonly fact: T;
  readonly row: SheetRow;
}

/** All facts, each with its row. */
export type ToldFacts = { readonly [K in keyof Facts]: readonly Told<Facts[K][number]>[] };

/** @param sheetOf the rows of a file under the columns given */
export function readFacts(
  sheetOf: (file: keyof typeof FACT_COLUMNS, columns: readonly string[]) => readonly SheetRow[],
): ToldFacts {
  const rows = (file: keyof typeof FACT_COLUMNS) => sheetOf(file, FACT_COLUMNS[file]);
  return {
    pairs: told(rows('pair-facts.csv'), toPair),
    restrictions: told(rows('restrictions.csv'), toRestriction),
    bystanders: told(rows('bystanders.csv'), toBystander),
    speciations: told(rows('speciations.csv'), toSpeciation),
  };
}

function told<T>(rows: readonly SheetRow[], read: (row: SheetRow) => T | undefined): Told<T>[] {
  return rows.flatMap((row) => {
    const fact = read(row);
    return fact === undefined ? [] : { fact, row };
  });
}

function because(row: SheetRow): { because: string; source: string } {
  return { because: row.required('because'), source: row.required('source') };
}

function mediaIn(row: SheetRow): Pick<PairFact, 'media'> {
  const media = row.listOf('media', MEDIA);
  return media.length === 0 ? {} : { media };
}

function needsIn(row: SheetRow): { needs?: Condition[] } {
  const needs = row.listOf('needs', CONDITIONS);
  return needs.length === 0 ? {} : { needs };
}

function toPair(row: SheetRow): PairFact | undefined {
  const oxidant = keyIn(row, 'oxidant', true);
  const reductant = keyIn(row, 'reductant', true);
  const verdict = row.oneOf('verdict', VERDICTS);
  const needs = needsIn(row);
  if ((verdict === 'conditional') !== (needs.needs !== undefined)) {
    row.fault('needs-and-verdict', 'a conditional pair, and no other, names in column `needs` what makes it react');
  }
  if (oxidant === '*' && reductant === '*') row.fault('bad-pair', 'one of the two species is named');
  if (!oxidant || !reductant || !verdict) return undefined;
  return { oxidant, reductant, verdict, ...mediaIn(row), ...needs, ...because(row) };
}

function toRestriction(row: SheetRow): Restriction | undefined {
  const couple = row.required('couple');
  const as = row.oneOf('as', ROLES);
  const partners = keysIn(row, 'partners');
  row.required('partners');
  return as && { couple, as, partners, ...mediaIn(row), ...needsIn(row), ...because(row) };
}

function toBystander(row: SheetRow): Bystander | undefined {
  const species = keyIn(row, 'species');
  const as = row.oneOf('as', ROLES);
  if (!species || !as) return undefined;
  return { species, as, unlessNamed: row.yes('unless named'), ...because(row) };
}

function toSpeciation(row: SheetRow): Speciation | undefined {
  const species = keyIn(row, 'species');
  const becomes = keyIn(row, 'becomes');
  const medium = row.oneOf('medium', MEDIA);
  const count = row.attempt(() => Rational.parse(row.required('count')));
  if (!species || !becomes || !medium || !count) return undefined;
  if (count.sign() <= 0) row.fault('bad-count', `expected a number above zero, found \`${row.text('count')}\``);
  return { species, medium, becomes, count, source: row.required('source') };
}
