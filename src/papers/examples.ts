import type { Wording } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import type { Tables } from '../potentials/tables.ts';
import { makeQuestion } from '../questions/make-question.ts';
import type { Question } from '../questions/question.ts';
import { codeOf } from '../random/code.ts';
import { familyOf } from './allowed-families.ts';
import { type AskedOfAll, askOf } from './ask-of.ts';

/** Codes that are tried for an example of the question's own form, and for any before it is said that none can be had. */
const TRIES = 12;
const MOST_TRIES = 60;

/**
 * The worked example that stands before a question: the same family and level, its code made from the question's, sharing no answer
 * with any question of the paper. It has the question's form (what is given and how, what comes out) or, where no code gives that, the
 * one nearest to it.
 * @throws Fault `no-example`
 */
export function exampleFor(
  question: Question,
  paper: readonly Question[],
  asked: AskedOfAll,
  tables: Tables,
  wording: Wording,
): Question {
  let best: { readonly example: Question; readonly unlike: number } | undefined;
  for (let variant = 0; variant < (best ? TRIES : MOST_TRIES); variant += 1) {
    const slot = { slot: `example of ${question.slot}`, variant, code: codeOf([question.code, 'example', variant]) };
    const example = makeQuestion(familyOf(question.family), slot, askOf(asked, question.level, 'written'), tables, wording);
    if (tellsAnswer(example, paper)) continue;
    const unlike = unlikeness(example, question);
    if (unlike === 0) return example;
    if (!best || unlike < best.unlike) best = { example, unlike };
  }
  if (best) return best.example;
  throw new Fault(
    'no-example',
    `no worked example of \`${question.family}\` can be had that gives none of this sheet's answers away; ask for fewer questions`,
  );
}

function tellsAnswer(example: Question, paper: readonly Question[]): boolean {
  const answers = new Set(example.asks);
  return paper.some(
    (other) =>
      other.asks.some((fact) => answers.has(fact)) || (other.family === example.family && other.identity === example.identity),
  );
}

/**
 * How far an example is from a question: parts that the one asks and the other does not, and demand features of both that differ, with
 * what comes out first. A choice is held against the step that it asks.
 */
export function unlikeness(example: Question, question: Question): number {
  const features = Object.entries(question.features).filter(([name]) => name !== 'answering' && name in example.features);
  const differing = features.filter(([name, value]) => !`, ${example.features[name]}, `.includes(`, ${value}, `));
  const weights = differing.map(([name]) => (OUTCOMES.has(name) ? 5 : 1));
  return weights.reduce((sum, weight) => sum + weight, 0) + 10 * missingSteps(example, question);
}

/** Features that say what an answer is like: a model with another outcome models something else. */
const OUTCOMES: ReadonlySet<string> = new Set(['outcome', 'shape', 'given', 'direction', 'what is seen']);

function missingSteps(example: Question, question: Question): number {
  const worked = new Set(example.steps.map(({ id }) => id));
  return question.parts.flatMap(({ answers }) => answers).filter((id) => !worked.has(id)).length;
}
