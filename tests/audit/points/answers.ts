import { imbalances } from '../chemistry/conservation.ts';
import { count, ELECTRON } from '../chemistry/sides.ts';
import { marksOf, numberMark } from '../engine/answer.ts';
import type { Node } from '../engine/case.ts';
import { acceptedRange, shown } from '../engine/chain.ts';
import { difference, marksIn } from '../engine/marks.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { ReadScheme } from '../reading/scheme.ts';
import { everyToken, type Token } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

/** Each answer that the scheme gives is the one that the auditor finds, printed as it ought to be, with its accepted range. */
export function auditAnswers(audited: Audited): void {
  for (const block of audited.blocks) {
    if (block.answers.length !== block.roles.length) {
      audited.ledger.note(at(audited, block.label), 'answer', {
        problem: `${block.answers.length} answers for ${block.roles.length} steps`,
      });
    }
    for (const [index, tokens] of block.answers.entries()) auditAnswer(audited, block, tokens, block.roles[index] ?? '');
  }
}

function auditAnswer(audited: Audited, block: ReadScheme, tokens: readonly Token[], role: string): void {
  const { asked, right, ledger, question } = audited;
  const place = at(audited, block.label);
  const node = asked.nodes.find(({ id }) => id === role);
  if (!node) {
    ledger.note(place, 'answer', { unreached: `no own answer at \`${role}\`` });
    return;
  }
  const answer = right.get(node.id)!;
  const isChoice = question.parts.some(({ options }) => options.length > 0);
  const expected = [...marksOf(answer, node.figures, node.signed), ...(isChoice ? [] : rangeMarks(audited, node))];
  const found = marksIn(isChoice ? withoutLetter(tokens) : tokens, asked.vocabulary);
  const wrong = difference(expected, found);
  const drifts = shown(node, answer).join() !== shown(node, audited.printed.get(node.id)!).join();
  ledger.noteAll(place, 'answer', [
    ...(wrong ? [`answer ${role}: ${wrong}`] : []),
    ...(drifts ? [`answer ${role} is another when figures are carried as they are printed`] : []),
  ]);
  if (!isChoice && answer.kind === 'number' && rangeMarks(audited, node).length > 0)
    ledger.note(place, 'accepted range', 'holds');
  for (const { equation } of everyToken(tokens, 'equation'))
    ledger.noteAll(place, 'equation printed as right', equationProblems(equation));
}

/** The marks of `(accept 0.0399 to 0.0401)`: nothing when all ways of rounding agree. */
function rangeMarks({ asked }: Audited, { id, signed, figures }: Node): string[] {
  const range = acceptedRange(asked.nodes, id);
  if (!range || range.least.equals(range.most)) return [];
  return [range.least, range.most].map((value) => numberMark(writeNumber(value, figures, signed), ''));
}

/** Without the letter of the right option that stands before its content. */
export function withoutLetter(tokens: readonly Token[]): readonly Token[] {
  const [first, ...rest] = tokens;
  return first?.kind === 'words' ? [{ ...first, text: first.text.replace(/^[A-H]\s+/, '') }, ...rest] : tokens;
}

/** An equation that is given as right conserves everything and is as short as it can be. */
export function equationProblems(equation: Extract<Token, { kind: 'equation' }>['equation']): string[] {
  const { left, right, text } = equation;
  const isHalf = !count(left, ELECTRON).equals(count(right, ELECTRON));
  const both = [...left.keys()].filter((key) => right.has(key));
  const coefficients = [...left.values(), ...right.values()];
  const common = coefficients.every((each) => each.isWhole()) && hasCommonFactor(coefficients.map(({ above }) => above));
  return [
    ...imbalances(equation).map((each) => `${text} does not balance: ${each}`),
    ...both.map((key) => `${text} has ${key} on both sides`),
    ...(coefficients.every((each) => each.side() > 0) ? [] : [`${text} has a coefficient that is not above zero`]),
    ...(coefficients.every((each) => each.isWhole()) ? [] : [`${text} has a fraction`]),
    ...(common ? [`${text} can be divided through`] : []),
    ...(equation.arrow === 'reversible' && !isHalf ? [`${text} has a reversible arrow`] : []),
  ];
}

function hasCommonFactor(numbers: readonly bigint[]): boolean {
  const least = BigInt(Math.min(...numbers.map(Number)));
  for (let factor = 2n; factor <= least; factor += 1n) if (numbers.every((each) => each % factor === 0n)) return true;
  return false;
}
