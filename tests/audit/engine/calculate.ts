import { Fraction } from '../exact/fraction.ts';
import { readNumber } from '../exact/printed-number.ts';
import type { Token } from '../reading/tokens.ts';

type Lexeme = Fraction | '+' | '-' | '*' | '/' | '(' | ')';

const OPERATORS: Readonly<Record<string, Lexeme>> = { '+': '+', '\u2212': '-', '×': '*', '÷': '/', '/': '/', '(': '(', ')': ')' };
const PIECE = /\s*(\d+(?:\.\d+)?(?: × 10\^-?\d+)?|[+\u2212×÷/()])/gy;

/** The figures of a line of working, signs left off, and what the arithmetic gives, read as it is printed. @returns undefined when it is no arithmetic */
export function calculate(
  tokens: readonly Token[],
): { readonly value: Fraction; readonly figures: readonly string[] } | undefined {
  const figures: string[] = [];
  const lexemes = lexemesOf(tokens, figures);
  if (!lexemes) return undefined;
  const rest = [...lexemes];
  const value = sum(rest);
  return value && rest.length === 0 ? { value, figures } : undefined;
}

function lexemesOf(tokens: readonly Token[], figures: string[]): Lexeme[] | undefined {
  const lexemes: Lexeme[] = [];
  for (const token of tokens) {
    if (token.kind === 'number') {
      figures.push(token.number.text.replace(/^[+\u2212]/, ''));
      lexemes.push(token.number.value);
    } else if (token.kind === 'fraction') {
      const [above, below] = [lexemesOf(token.above, figures), lexemesOf(token.below, figures)];
      if (!above || !below) return undefined;
      lexemes.push('(', '(', ...above, ')', '/', '(', ...below, ')', ')');
    } else if (token.kind === 'words') {
      const found = lexemesInWords(token.text, figures);
      if (!found) return undefined;
      lexemes.push(...found);
    } else return undefined;
  }
  return lexemes;
}

function lexemesInWords(text: string, figures: string[]): Lexeme[] | undefined {
  const lexemes: Lexeme[] = [];
  PIECE.lastIndex = 0;
  let at = 0;
  for (let match = PIECE.exec(text); match; match = PIECE.exec(text)) {
    at = PIECE.lastIndex;
    const piece = match[1]!;
    const number = readNumber(piece);
    if (number) {
      figures.push(piece);
      lexemes.push(number.value);
    } else lexemes.push(OPERATORS[piece]!);
  }
  return text.slice(at).trim() === '' ? lexemes : undefined;
}

function sum(rest: Lexeme[]): Fraction | undefined {
  let total = product(rest);
  while (total && (rest[0] === '+' || rest[0] === '-')) {
    const sign = rest.shift();
    const next = product(rest);
    total = next && (sign === '+' ? total.add(next) : total.subtract(next));
  }
  return total;
}

function product(rest: Lexeme[]): Fraction | undefined {
  let total = factor(rest);
  while (total && (rest[0] === '*' || rest[0] === '/')) {
    const sign = rest.shift();
    const next = factor(rest);
    if (sign === '/' && next?.side() === 0) return undefined;
    total = next && (sign === '*' ? total.multiply(next) : total.divide(next));
  }
  return total;
}

function factor(rest: Lexeme[]): Fraction | undefined {
  const first = rest.shift();
  if (first instanceof Fraction) return first;
  if (first === '-') return factor(rest)?.negative();
  if (first === '+') return factor(rest);
  if (first !== '(') return undefined;
  const inner = sum(rest);
  return rest.shift() === ')' ? inner : undefined;
}
