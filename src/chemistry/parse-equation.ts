import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Equation, Term } from './equation.ts';
import type { Formula } from './formula.ts';
import { parseFormula } from './parse-formula.ts';

const ARROW = /<=>|⇌|→|⟶|->|=/g;
const LONGEST = 1000;

type FormulaReading = (text: string) => Formula;

/** A piece of the text as typed, and where it begins. */
interface Piece {
  readonly text: string;
  readonly at: number;
}

/**
 * Reads `MnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O`. The arrow is `->`, `=`, `→`, `<=>` or `⇌`; coefficients are whole numbers or
 * fractions such as `1/2`; a `+` between species has a space on both sides. Terms stay in order and are not added up.
 * @param formulaOf reads each formula; a table of many equations gives one that remembers
 * @throws Fault `bad-equation` or `bad-formula`, whose place underlines what is wrong in `text`
 */
export function parseEquation(text: string, formulaOf: FormulaReading = parseFormula): Equation {
  if (text.length > LONGEST) throw bad(`an equation has at most ${LONGEST} characters`, text, LONGEST, text.length - LONGEST);
  const arrows = [...text.matchAll(ARROW)];
  const arrow = arrows[0];
  if (!arrow) throw bad('expected an arrow `->` between the two sides', text, 0, text.length);
  const second = arrows[1];
  if (second) throw bad('an equation has one arrow, found another', text, second.index, second[0].length);
  const after = arrow.index + arrow[0].length;
  return {
    left: readSide(text, { text: text.slice(0, arrow.index), at: 0 }, formulaOf),
    right: readSide(text, { text: text.slice(after), at: after }, formulaOf),
  };
}

function bad(message: string, text: string, at: number, length: number): Fault {
  return new Fault('bad-equation', message, { text, at, length: Math.max(1, length) });
}

function readSide(whole: string, side: Piece, formulaOf: FormulaReading): Term[] {
  if (side.text.trim() === '') throw bad('expected species on both sides of the arrow', whole, side.at, side.text.length);
  return split(side).map((piece) => readTerm(whole, piece, formulaOf));
}

/** Cuts a side at every `+` that has space on both sides. */
function split(side: Piece): Piece[] {
  const pieces: Piece[] = [];
  let from = 0;
  for (const plus of side.text.matchAll(/\s\+(?=\s)/g)) {
    pieces.push({ text: side.text.slice(from, plus.index), at: side.at + from });
    from = plus.index + 2;
  }
  pieces.push({ text: side.text.slice(from), at: side.at + from });
  return pieces;
}

function readTerm(whole: string, piece: Piece, formulaOf: FormulaReading): Term {
  const lead = piece.text.length - piece.text.trimStart().length;
  const text = piece.text.trim();
  const at = piece.at + lead;
  if (text === '') throw bad('expected a species, found nothing beside the `+`', whole, piece.at, piece.text.length);
  const joined = /\+\s*(?=[A-Z\d[½])|\+\s*e\^/.exec(text);
  if (joined) throw bad('between two species write ` + ` with a space on both sides', whole, at + joined.index, 1);
  const number = /^(½|\d+(?:\/\d+)?)\s*/.exec(text);
  const skip = number?.[0].length ?? 0;
  const coefficient = number ? readCoefficient(whole, number[1]!, at) : Rational.one;
  return { coefficient, formula: relocated(() => formulaOf(text.slice(skip)), whole, at + skip) };
}

function readCoefficient(whole: string, text: string, at: number): Rational {
  const plain = text === '½' ? '1/2' : text;
  if (plain.length > 20 || /^0+(\/|$)|\/0+$/.test(plain)) {
    throw bad(`expected a coefficient such as 2 or 1/2, found \`${text}\``, whole, at, text.length);
  }
  return Rational.parse(plain);
}

/** Runs a reader of a part; a fault in it is told against the whole text. */
export function relocated<T>(read: () => T, whole: string, offset: number): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Fault) || error.place.text === undefined) throw error;
    const at = Math.min(offset + (error.place.at ?? 0), whole.length);
    throw new Fault(error.code, error.message, { ...error.place, text: whole, at, length: error.place.length ?? 1 });
  }
}
