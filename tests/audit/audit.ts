import { CASES } from './cases/index.ts';
import { type Case, stepsOf, Unreadable } from './engine/case.ts';
import { worked, workedAsPrinted } from './engine/chain.ts';
import { Ledger, type Place } from './engine/ledger.ts';
import type { PaperDocuments } from './plain.ts';
import { auditAnswers } from './points/answers.ts';
import { auditCueing, auditKeys } from './points/cueing.ts';
import { auditGivenPoints } from './points/given-points.ts';
import { auditLeaks } from './points/leaks.ts';
import { auditPoints } from './points/marking-points.ts';
import { auditOptions } from './points/options.ts';
import { auditPrintedEquations } from './points/printed-equations.ts';
import { auditRows } from './points/rows.ts';
import { auditSpecies } from './points/species-named.ts';
import { auditHazards, auditReveals, auditTotals } from './points/totals.ts';
import { auditExampleLines, auditWorking } from './points/working.ts';
import { type ReadMarkScheme, readMarkScheme } from './reading/scheme.ts';
import { type ReadQuestion, readSheet } from './reading/sheet.ts';

const CHECKS = [
  auditSpecies,
  auditPrintedEquations,
  auditAnswers,
  auditPoints,
  auditWorking,
  auditRows,
  auditOptions,
  auditGivenPoints,
  auditLeaks,
];

/**
 * Audits one paper from its two documents alone.
 * @param isChosen the program chose the questions to stand together: then none may answer another
 */
export function auditPaper({ sheet, scheme }: PaperDocuments, ledger = new Ledger(), isChosen = false): Ledger {
  const [read, marks] = [readSheet(sheet), readMarkScheme(scheme)];
  const place: Place = { family: 'paper', answering: 'paper', code: read.questions[0]?.code ?? '', label: '' };
  auditTotals(ledger, place, read, marks);
  auditReveals(ledger, place, marks);
  auditHazards(ledger, place, read, marks);
  if (isChosen) auditCueing(ledger, place, read, marks);
  if (isChosen) auditKeys(ledger, place, marks);
  for (const question of read.questions) auditQuestion(ledger, question, marks);
  for (const { before, question } of read.examples) auditExample(ledger, place, question, marks, before);
  return ledger;
}

function auditQuestion(ledger: Ledger, question: ReadQuestion, scheme: ReadMarkScheme): void {
  const { family = 'unknown' } = scheme.codes.get(question.number) ?? {};
  const answering = question.parts.some(({ options }) => options.length > 0) ? 'choice' : 'written';
  const place: Place = { family, answering, code: question.code, label: String(question.number) };
  const blocks = scheme.blocks.filter((block) => block.question === question.number);
  ledger.questions += 1;
  const asked = caseOf(ledger, place, question, blocks, scheme.level);
  if (!asked) return;
  ledger.noteAll(place, 'question as asked', asked.faults);
  const audited = {
    ledger,
    place,
    question,
    blocks,
    asked,
    support: scheme.support,
    right: worked(asked.nodes),
    printed: workedAsPrinted(asked.nodes),
  };
  for (const check of CHECKS) check(audited);
}

/** A worked example has no scheme of its own: its lines are held against the auditor's work of what it prints. */
function auditExample(ledger: Ledger, paper: Place, question: ReadQuestion, scheme: ReadMarkScheme, before: number): void {
  const { family = 'unknown', code = '' } = scheme.codes.get(before) ?? {};
  const place: Place = { ...paper, family, answering: 'written', code, label: `example before ${before}` };
  const asked = caseOf(ledger, place, question, [], scheme.level);
  if (asked) auditExampleLines(ledger, place, question, asked);
}

function caseOf(
  ledger: Ledger,
  place: Place,
  question: ReadQuestion,
  blocks: ReadMarkScheme['blocks'],
  level: string,
): Case | undefined {
  const reader = CASES[place.family];
  if (!reader) {
    ledger.note(place, 'whole question', { unreached: `the auditor does not know the family ${place.family}` });
    return undefined;
  }
  try {
    return reader({ question, steps: stepsOf(blocks), level });
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    ledger.note(place, 'question as asked', { problem: `cannot be worked from what is printed: ${error.message}` });
    return undefined;
  }
}
