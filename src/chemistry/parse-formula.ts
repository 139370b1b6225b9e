import { Fault } from '../exact/fault.ts';
import { hintForCharge } from './charge-hint.ts';
import { totalAtoms } from './composition.ts';
import { isElement } from './elements.ts';
import type { Formula, FormulaNode, FormulaUnit, State } from './formula.ts';
import { electron } from './formula-parts.ts';
import { FormulaReader } from './formula-reader.ts';
import { ligandAbbreviation } from './ligand-abbreviations.ts';

const LONGEST = 200;
const MOST_ATOMS = 100_000;
const DEEPEST = 6;

/**
 * Reads a formula in caret notation (`MnO4^-`, `[Fe(CN)6]^3-`, `CuSO4·5H2O`, `e^-`, states `(s) (l) (g) (aq)`), or with Unicode
 * scripts (`Cr₂O₇²⁻`). The dot of a hydrate may be typed `*` or `.`; `en` and `edta` stand for their formulas in brackets.
 * @throws Fault `bad-formula`, whose place underlines what is wrong in `text`
 */
export function parseFormula(text: string): Formula {
  if (text.length > LONGEST) {
    throw new Fault('bad-formula', `a formula has at most ${LONGEST} characters, found ${text.length}`, {
      text,
      at: LONGEST,
      length: text.length - LONGEST,
    });
  }
  const reader = new FormulaReader(text);
  reader.skipSpaces();
  if (reader.ended()) throw reader.fault('expected a formula such as `MnO4^-`, found nothing', 0, text.length);
  if (reader.peek() === 'e' && !/[a-z]/.test(reader.peek(1) ?? '')) return readElectron(reader);
  const units = readUnits(reader);
  const charge = reader.peek() === '^' ? readCharge(reader) : 0;
  reader.skipSpaces();
  const state = readState(reader);
  reader.skipSpaces();
  if (!reader.ended()) throw unexpected(reader, units);
  const formula: Formula = state ? { units, charge, state } : { units, charge };
  if (totalAtoms(formula) > MOST_ATOMS) throw reader.fault(`a formula has at most ${MOST_ATOMS} atoms`, 0, text.length);
  return formula;
}

function readElectron(reader: FormulaReader): Formula {
  reader.take();
  const charge = reader.peek() === '^' ? readCharge(reader) : 0;
  reader.skipSpaces();
  if (charge !== -1 || !reader.ended()) throw reader.fault('for the electron write `e^-`', 0);
  return electron;
}

/** The parts between raised dots; every part but the first may have a number in front. */
function readUnits(reader: FormulaReader): FormulaUnit[] {
  if (/\d/.test(reader.peek() ?? '')) {
    throw reader.faultHere(
      'a formula begins with an element; a number in front of it belongs to an equation',
      reader.digitsAhead(),
    );
  }
  const units: FormulaUnit[] = [{ count: 1, nodes: readNodes(reader, 0) }];
  for (;;) {
    const spaces = reader.spacesAhead();
    if (reader.peek(spaces) !== '·') return units;
    reader.skip(spaces + 1);
    reader.skipSpaces();
    const count = readCount(reader);
    units.push({ count, nodes: readNodes(reader, 0) });
  }
}

/** A run of elements and bracketed groups, up to whatever is neither. */
function readNodes(reader: FormulaReader, depth: number): FormulaNode[] {
  const nodes: FormulaNode[] = [];
  for (;;) {
    const char = reader.peek() ?? '';
    if (/[A-Z]/.test(char)) nodes.push(readElement(reader));
    else if (char === '[' || (char === '(' && !reader.stateAhead())) nodes.push(readGroup(reader, depth));
    else if (nodes.length > 0) return nodes;
    else if (/[a-z]/.test(char)) throw reader.faultHere(lowerCase(char, reader.peek(1)), reader.lettersAhead());
    else throw reader.faultHere(`expected an element or a bracket, found ${reader.found()}`);
  }
}

function lowerCase(first: string, second = ''): string {
  const symbol = [first.toUpperCase() + second, first.toUpperCase()].find(isElement);
  return `a symbol begins with a capital letter${symbol ? `: \`${symbol}\`` : ''}`;
}

function readElement(reader: FormulaReader): FormulaNode {
  const length = reader.lettersAhead();
  const symbol = reader.ahead(length);
  if (!isElement(symbol)) {
    throw reader.faultHere(
      `no element has the symbol \`${symbol}\`${symbol.length > 1 ? '; each symbol begins with a capital letter' : ''}`,
      length,
    );
  }
  reader.skip(length);
  return { kind: 'element', symbol, count: readCount(reader) };
}

function readGroup(reader: FormulaReader, depth: number): FormulaNode {
  const bracket = reader.peek() as '(' | '[';
  const close = bracket === '(' ? ')' : ']';
  if (depth >= DEEPEST) throw reader.faultHere(`brackets stand at most ${DEEPEST} deep`);
  const opened = reader.position();
  reader.take();
  const short = bracket === '(' ? ligandAbbreviation(reader.ahead(reader.lettersAhead())) : undefined;
  if (short) reader.skip(reader.lettersAhead());
  const nodes = short ?? readNodes(reader, depth + 1);
  if (reader.peek() !== close) {
    if (reader.ended()) throw reader.faultAt(`the bracket \`${bracket}\` is not closed: expected \`${close}\``, opened, 1);
    throw reader.faultHere(`expected \`${close}\` to close the bracket, found ${reader.found()}`);
  }
  reader.take();
  return { kind: 'group', bracket, nodes, count: readCount(reader) };
}

/** A whole number from 1 to 9999; 1 when none stands there. */
function readCount(reader: FormulaReader): number {
  const length = reader.digitsAhead();
  if (length === 0) return 1;
  const digits = reader.ahead(length);
  if (digits.startsWith('0') || length > 4)
    throw reader.faultHere(`expected a number from 1 to 9999, found \`${digits}\``, length);
  reader.skip(length);
  return Number(digits);
}

/** `^-`, `^3+`: the number, when it is not 1, before the sign. */
function readCharge(reader: FormulaReader): number {
  const start = reader.position();
  reader.take();
  const digits = reader.digitsAhead();
  const size = digits === 0 ? 1 : Number(reader.ahead(digits));
  const sign = reader.peek(digits);
  const length = digits + 2;
  if (sign !== '+' && sign !== '-') {
    throw reader.faultAt('a charge is a number and then a sign, such as `^2-` or `^+`', start, digits + 1);
  }
  if (size < 1 || size > 99) throw reader.faultAt(`expected a charge from 1 to 99, found \`${size}\``, start, length);
  reader.skip(digits + 1);
  if (/[\d+-]/.test(reader.peek() ?? '')) {
    throw reader.faultAt('a charge is written with the number first and one sign, such as `^2-`', start, length + 1);
  }
  return sign === '+' ? size : -size;
}

function readState(reader: FormulaReader): State | undefined {
  const state = reader.stateAhead();
  if (state) reader.skip(state.length + 2);
  return state;
}

/** What to say of the first character that fits nothing. */
function unexpected(reader: FormulaReader, units: readonly FormulaUnit[]): Fault {
  if (/^\d[+-]/.test(reader.ahead(2))) reader.take();
  const char = reader.peek()!;
  if (char === '+' || char === '-') return hintForCharge(reader, units);
  if (char === ')' || char === ']') return reader.faultHere(`the bracket \`${char}\` closes nothing`);
  if (/[a-z]/.test(char)) return reader.faultHere(lowerCase(char, reader.peek(1)), reader.lettersAhead());
  if (char === '(') return reader.faultHere('expected a state `(s)`, `(l)`, `(g)` or `(aq)`, last of all');
  return reader.faultHere(`expected the end of the formula, found ${reader.found()}`);
}
