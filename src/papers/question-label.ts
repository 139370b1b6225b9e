import { Fault } from '../exact/fault.ts';
import type { Answering, Level, Question } from '../questions/question.ts';
import { isCode } from '../random/code.ts';
import { familyOf } from './allowed-families.ts';
import { isChoice } from './candidates.ts';

/** What names one question to people: family, code, level and how it is answered. With the table it makes the question again. */
export interface QuestionLabel {
  readonly family: string;
  readonly code: string;
  readonly level: Level;
  readonly answering: Answering;
}

/** `cell-emf:3V8DQQJN`, with `:stretch` and `:choice` where they are not the usual core and written. */
export function labelText({ family, code, level, answering }: QuestionLabel): string {
  return [family, code, ...(level === 'core' ? [] : [level]), ...(answering === 'written' ? [] : [answering])].join(':');
}

/** The label of a question that is made. */
export function labelOf(question: Question): QuestionLabel {
  return {
    family: question.family,
    code: question.code,
    level: question.level,
    answering: isChoice(question) ? 'choice' : 'written',
  };
}

/**
 * Reads a label back; small letters will do for the code.
 * @throws Fault `bad-label` saying what was expected; `unknown-family` with near matches
 */
export function readLabel(text: string): QuestionLabel {
  const [family = '', typed = '', ...rest] = text.trim().split(':');
  const code = typed.toUpperCase();
  const known = rest.every((word) => ['core', 'stretch', 'written', 'choice'].includes(word)) && rest.length <= 2;
  if (!isCode(code) || !known) {
    throw new Fault(
      'bad-label',
      `expected a family and a code, such as \`cell-emf:3V8DQQJN\` or \`cell-emf:3V8DQQJN:stretch\`, found \`${text}\``,
    );
  }
  const answering = rest.includes('choice') ? 'choice' : 'written';
  if (!familyOf(family).answering.includes(answering))
    throw new Fault('bad-label', `\`${family}\` is not asked as multiple choice`);
  return { family, code, level: rest.includes('stretch') ? 'stretch' : 'core', answering };
}
