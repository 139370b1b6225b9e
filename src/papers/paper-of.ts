import type { Wording } from '../document/wording.ts';
import type { Tables } from '../potentials/tables.ts';
import { makeQuestion } from '../questions/make-question.ts';
import { familyOf } from './allowed-families.ts';
import { askOf } from './ask-of.ts';
import { paperFrom, provenance } from './make-paper.ts';
import type { Paper, Provenance } from './paper.ts';
import { withKeyAt } from './place-keys.ts';
import type { PaperRecord } from './record.ts';

/**
 * Makes the paper of a record again, question by question from its codes.
 * @returns the paper, and in words what differs from when it was first made (empty when nothing does: the bytes are the same)
 * @throws Fault `unknown-family`, `no-question`
 */
export function paperOf(
  record: PaperRecord,
  tables: Tables,
  wording: Wording,
  version: string,
): { paper: Paper; differences: string[] } {
  const now = provenance(tables, wording, version);
  const questions = record.questions.map(({ family, slot, variant, code, level, answering, keyPlace }) => {
    const ask = askOf(record.request, level, answering);
    const question = makeQuestion(familyOf(family), { slot, variant, code }, ask, tables, wording);
    return keyPlace === undefined ? question : withKeyAt(question, keyPlace);
  });
  const paper = { ...paperFrom(record.request, questions, { tables, wording, version }), title: record.title };
  const marks = paper.marks === record.marks ? [] : [`the marks are ${paper.marks}; they were ${record.marks}`];
  return { paper, differences: [...differencesBetween(record.made, now), ...marks] };
}

function differencesBetween(then: Provenance, now: Provenance): string[] {
  return [
    ...(then.version === now.version ? [] : [`this is version ${now.version}; the record was made with ${then.version}`]),
    ...(then.table.digest === now.table.digest
      ? []
      : [
          `the table in force is ${now.table.name} (${now.table.digest}); the record was made with ${then.table.name} (${then.table.digest})`,
        ]),
    ...(then.wording === now.wording ? [] : [`the wording in force is ${now.wording}; the record was made with ${then.wording}`]),
  ];
}
