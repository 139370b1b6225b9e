import type { Wording } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import type { Tables } from '../potentials/tables.ts';
import { makeQuestion } from '../questions/make-question.ts';
import type { Question } from '../questions/question.ts';
import { codeOf } from '../random/code.ts';
import { familyOf } from './allowed-families.ts';
import { type AskedOfAll, askOf } from './ask-of.ts';

/** Codes that are tried for an example before it is said that none can be had. */
const MOST_TRIES = 60;

/**
 * The worked example that stands before a question: the same family and level, its code made from the question's, sharing no answer
 * with any question of the paper.
 * @throws Fault `no-example`
 */
export function exampleFor(
  question: Question,
  paper: readonly Question[],
  asked: AskedOfAll,
  tables: Tables,
  wording: Wording,
): Question {
  for (let variant = 0; variant < MOST_TRIES; variant += 1) {
    const slot = { slot: `example of ${question.slot}`, variant, code: codeOf([question.code, 'example', variant]) };
    const example = makeQuestion(familyOf(question.family), slot, askOf(asked, question.level, 'written'), tables, wording);
    const answers = new Set(example.asks);
    const tells = paper.some(
      (other) =>
        other.asks.some((fact) => answers.has(fact)) || (other.family === example.family && other.identity === example.identity),
    );
    if (!tells) return example;
  }
  throw new Fault(
    'no-example',
    `no worked example of \`${question.family}\` can be had that gives none of this sheet's answers away; ask for fewer questions`,
  );
}
