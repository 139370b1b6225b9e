import type { TitrationSystem } from '../chemistry/titration-system.ts';
import type { FaultList } from './fault-list.ts';
import type { Told } from './read-facts.ts';
import { formulaIn } from './read-formula.ts';
import { readSheet, type SheetRow } from './sheet.ts';

const COLUMNS = [
  'titrant',
  'analyte',
  'level',
  'titrant salt',
  'analyte salt',
  'acid',
  'condition',
  'indicator',
  'at first',
  'at the end',
  'also accepted',
  'because',
  'source',
];

/** Pairs of couples that a class titrates, each with its row for faults found later. */
export function readTitrations(file: string, text: string, faults: FaultList): Told<TitrationSystem>[] {
  return readSheet(file, text, { needed: COLUMNS }, faults).flatMap((row) => {
    const fact = toSystem(row);
    return fact ? { fact, row } : [];
  });
}

function toSystem(row: SheetRow): TitrationSystem | undefined {
  const level = row.oneOf('level', ['core', 'stretch']);
  const titrantSalt = formulaIn(row, row.required('titrant salt'));
  const analyteSalt = formulaIn(row, row.required('analyte salt'));
  const [acid, condition] = [row.text('acid'), row.text('condition')];
  if (!level || !titrantSalt || !analyteSalt) return undefined;
  return {
    titrant: row.required('titrant'),
    analyte: row.required('analyte'),
    level,
    titrantSalt,
    analyteSalt,
    ...(acid === '' ? {} : { acid }),
    ...(condition === '' ? {} : { condition }),
    indicator: row.required('indicator'),
    before: row.required('at first'),
    after: row.required('at the end'),
    alsoAccepted: row.list('also accepted'),
    because: row.required('because'),
    source: row.required('source'),
  };
}
