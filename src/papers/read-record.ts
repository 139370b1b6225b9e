import { Fault, Faults } from '../exact/fault.ts';
import { isCode } from '../random/code.ts';
import type { PaperRecord } from './record.ts';

type Shape = 'text' | 'whole' | 'number' | 'list' | 'object' | 'code';

const FIELDS: Readonly<Record<string, Shape>> = {
  'made.version': 'text',
  'made.wording': 'text',
  'made.table.name': 'text',
  'made.table.digest': 'text',
  'request.seed': 'text',
  'request.name': 'text',
  'request.level': 'text',
  'request.support': 'text',
  'request.units': 'text',
  'request.choice': 'number',
  'request.families': 'list',
  'request.topics': 'list',
  'request.without': 'list',
  'request.length': 'object',
  title: 'text',
  marks: 'whole',
  minutes: 'whole',
  questions: 'list',
};

const QUESTION_FIELDS: Readonly<Record<string, Shape>> = {
  number: 'whole',
  slot: 'text',
  family: 'text',
  variant: 'whole',
  code: 'code',
  level: 'text',
  answering: 'text',
  marks: 'whole',
};

/**
 * Reads a record and checks its shape.
 * @param file its name, for faults
 * @throws Fault `not-a-record`, or Faults with every field that is not as expected
 */
export function readRecord(text: string, file: string): PaperRecord {
  const record = parse(text, file);
  if (!isObject(record) || record.kind !== 'couplet-record') {
    throw new Fault('not-a-record', 'expected a record that `couplet sheet` wrote (its `kind` is `couplet-record`)', { file });
  }
  const questions = Array.isArray(record.questions) ? record.questions : [];
  const faults = [
    ...problemsIn(record, FIELDS, ''),
    ...questions.flatMap((question, at) => problemsIn(question, QUESTION_FIELDS, `questions[${at}].`)),
  ].map((message) => new Fault('bad-record', message, { file }));
  if (faults.length > 0) throw new Faults(faults);
  return record as unknown as PaperRecord;
}

function parse(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    // Node names the position for some faults only.
    const at = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
    if (at === undefined) throw new Fault('not-a-record', 'expected JSON', { file });
    const before = text.slice(0, Number(at)).split('\n');
    throw new Fault('not-a-record', 'expected JSON', { file, line: before.length, column: before.at(-1)!.length + 1 });
  }
}

function problemsIn(holder: unknown, fields: Readonly<Record<string, Shape>>, path: string): string[] {
  return Object.entries(fields).flatMap(([name, shape]) => {
    const value = name.split('.').reduce<unknown>((inner, key) => (isObject(inner) ? inner[key] : undefined), holder);
    return hasShape(value, shape)
      ? []
      : [`\`${path}${name}\`: expected ${WORDS[shape]}, found ${value === undefined ? 'nothing' : JSON.stringify(value)}`];
  });
}

const WORDS: Readonly<Record<Shape, string>> = {
  text: 'text',
  whole: 'a whole number',
  number: 'a number',
  list: 'a list',
  object: 'an object',
  code: 'a question code of eight characters',
};

function hasShape(value: unknown, shape: Shape): boolean {
  switch (shape) {
    case 'text':
      return typeof value === 'string' && value !== '';
    case 'whole':
      return Number.isInteger(value);
    case 'number':
      return typeof value === 'number';
    case 'list':
      return Array.isArray(value);
    case 'object':
      return isObject(value);
    case 'code':
      return typeof value === 'string' && isCode(value);
  }
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
