import { calculate } from '../engine/calculate.ts';
import type { Case, Node } from '../engine/case.ts';
import { shown, workedAsPrinted } from '../engine/chain.ts';
import type { Ledger, Place } from '../engine/ledger.ts';
import { difference, marksIn } from '../engine/marks.ts';
import type { Fraction } from '../exact/fraction.ts';
import { toPlaces } from '../exact/rounding.ts';
import type { ReadScheme } from '../reading/scheme.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import type { Token } from '../reading/tokens.ts';
import { type Audited, at, lastRole } from './place.ts';

type Line = ReadScheme['worked'][number];

/** Each line of working is right arithmetic on figures that can be found, and ends in the figure that the auditor has for its step. */
export function auditWorking(audited: Audited): void {
  const { ledger, blocks, question } = audited;
  const known = knownFigures(audited);
  for (const { worked, label } of blocks) {
    for (const line of worked) ledger.noteAll(at(audited, label), 'line of working', lineProblems(audited, line, known));
  }
  for (const { given, letter } of question.parts) {
    const place = at(audited, `${question.number}${letter}`);
    for (const line of given) ledger.noteAll(place, 'line given to the pupil', givenProblems(audited, line, known));
  }
}

/** Each line of a worked example on the sheet. */
export function auditExampleLines(ledger: Ledger, place: Place, { parts }: ReadQuestion, asked: Case): void {
  const own = { asked, printed: workedAsPrinted(asked.nodes) };
  const known = knownFigures(own);
  for (const { given } of parts) {
    for (const line of given) ledger.noteAll(place, 'line of a worked example', lineProblems(own, line, known));
  }
}

/** A line on the sheet is whole, or a frame with gaps in which no figure may stand. */
function givenProblems(audited: Audited, line: Line, known: ReadonlySet<string>): string[] {
  const hasGap = line.right.some(({ kind }) => kind === 'gap');
  if (hasGap)
    return marksIn(line.right, { numbers: true }).some((mark) => !mark.startsWith('unit '))
      ? ['a frame to fill in shows a figure']
      : [];
  return lineProblems(audited, line, known);
}

export function lineProblems(
  audited: Pick<Audited, 'asked' | 'printed'>,
  { left, right }: Line,
  known: ReadonlySet<string>,
): string[] {
  const { asked, printed: answers } = audited;
  const node = asked.nodes.find(({ id }) => id === lastRole(right));
  const split = splitAtEquals(right);
  if (!split) return saidProblems(audited, right, node);
  const result = split.result.at(-1);
  const sum = calculate(split.sum);
  if (result?.kind !== 'number' || !sum)
    return [`a line of working cannot be read: ${marksIn(right, { numbers: true }).join(' ')}`];
  const { number, unit } = result;
  const own = node && shown(node, answers.get(node.id)!)[0];
  const found = `number ${number.text}${unit === '' ? '' : ` ${unit}`}`;
  return [
    ...(atPlaces(sum.value, number.places).equals(number.value)
      ? []
      : [`the arithmetic gives ${sum.value}, the line ${number.text}`]),
    ...(own === undefined
      ? ['the figure of a line is of no step that the auditor knows']
      : own === found
        ? []
        : [`expected ${own}, found ${found}`]),
    ...sum.figures.filter((figure) => !known.has(figure)).map((figure) => `${figure} stands in working and nowhere before`),
    ...symbolProblems(left, node),
  ];
}

/** Fractions and whole numbers are exact; only decimals are rounded. */
const atPlaces = (value: Fraction, places: number): Fraction =>
  Number.isFinite(places) && places > 0 ? toPlaces(value, places) : value;

/** A line without arithmetic: an answer printed for the pupil. */
function saidProblems(
  { asked, printed: answers }: Pick<Audited, 'asked' | 'printed'>,
  right: readonly Token[],
  node: Node | undefined,
): string[] {
  const found = marksIn(right, asked.vocabulary);
  const fits = asked.nodes.some(
    (each) => (!node || each === node) && difference(shown(each, answers.get(each.id)!), found) === undefined,
  );
  return fits ? [] : [`a line says ${found.join('; ')}, which is no answer of the auditor's`];
}

function symbolProblems(left: readonly Token[], node: Node | undefined): string[] {
  if (!node?.left) return [];
  const found = left.flatMap((token) =>
    token.kind === 'symbol' ? [`symbol ${token.name}`, ...marksIn(token.of)] : marksIn([token]),
  );
  const wrong = difference(node.left, found);
  return wrong ? [`left of the equals sign: ${wrong}`] : [];
}

/** Figures that may stand in a sum, without their signs: what the sheet prints, what earlier steps give, coefficients, powers of ten. */
export function knownFigures({ asked, printed }: Pick<Audited, 'asked' | 'printed'>): Set<string> {
  const figures = asked.nodes.flatMap((node) => {
    const answer = printed.get(node.id)!;
    if (answer.kind === 'ratio') return [answer.left, answer.right].map(String);
    if (answer.kind === 'equation') return [...answer.sides.left.values(), ...answer.sides.right.values()].map(String);
    return shown(node, answer).map((mark) => mark.replace(/^number ([^ ]+(?: × 10\^-?\d+)?).*$/, '$1'));
  });
  return new Set([...asked.printed, ...figures, '1000', '100'].map((figure) => figure.replace(/^[+\u2212]/, '')));
}

/** What stands before and after the last equals sign of a line. */
function splitAtEquals(tokens: readonly Token[]): { sum: Token[]; result: Token[] } | undefined {
  for (let index = tokens.length - 1; index >= 0; index -= 1) {
    const token = tokens[index]!;
    const at = token.kind === 'words' ? token.text.lastIndexOf('=') : -1;
    if (token.kind !== 'words' || at < 0) continue;
    const part = (text: string): Token[] => (text.trim() === '' ? [] : [{ kind: 'words', text }]);
    return {
      sum: [...tokens.slice(0, index), ...part(token.text.slice(0, at))],
      result: [...part(token.text.slice(at + 1)), ...tokens.slice(index + 1)],
    };
  }
  return undefined;
}
