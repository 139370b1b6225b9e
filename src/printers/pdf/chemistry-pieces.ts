import type { Equation, Term } from '../../chemistry/equation.ts';
import type { Formula, FormulaNode } from '../../chemistry/formula.ts';
import type { Arrow } from '../../document/inline.ts';
import { speakEquation, speakFormula } from '../../document/spoken.ts';
import { coefficientText, equationText, formulaText } from './actual-text.ts';
import { BoxBuilder, gapPiece, type Pen, type Piece, type Speech } from './piece.ts';

/** A species as one unbreakable box, charge and state kept with it. */
export function formulaPiece(formula: Formula, pen: Pen): Piece {
  const builder = new BoxBuilder(pen);
  writeFormula(builder, formula, pen);
  return builder.build({ type: 'Formula', alt: speakFormula(formula), actual: formulaText(formula) });
}

function writeFormula(builder: BoxBuilder, formula: Formula, pen: Pen): void {
  for (const [i, unit] of formula.units.entries()) {
    if (i > 0)
      builder
        .skip(pen.size * 0.05)
        .text('·')
        .skip(pen.size * 0.05);
    if (unit.count !== 1) builder.text(String(unit.count));
    writeNodes(builder, unit.nodes);
  }
  if (formula.units.length === 0) builder.text('e');
  if (formula.charge !== 0) {
    const size = Math.abs(formula.charge);
    builder.skip(pen.size * 0.02).script(`${size === 1 ? '' : size}${formula.charge > 0 ? '+' : '\u2212'}`, 'above');
  }
  if (formula.state)
    builder.skip(pen.size * 0.06).text(`(${formula.state})`, { size: Math.max(pen.measures.floor, pen.size * 0.86) });
}

function writeNodes(builder: BoxBuilder, nodes: readonly FormulaNode[]): void {
  for (const node of nodes) {
    if (node.kind === 'element') builder.text(node.symbol);
    else {
      builder.text(node.bracket);
      writeNodes(builder, node.nodes);
      builder.text(node.bracket === '[' ? ']' : ')');
    }
    if (node.count !== 1) builder.script(String(node.count), 'below');
  }
}

/** How unwelcome a line end is before an arrow and before a plus sign. */
export const BEFORE_ARROW = 20;
const BEFORE_PLUS = 120;

/** An equation: may break only before its arrow or a plus sign. All of it is one Formula to a reader. */
export function equationPieces(equation: Equation, arrow: Arrow, pen: Pen): readonly Piece[] {
  const speech: Speech = { type: 'Formula', alt: speakEquation(equation, arrow), actual: equationText(equation, arrow) };
  const space = pen.size * 0.26;
  const side = (terms: readonly Term[], lead: Piece | undefined): Piece[] =>
    terms.flatMap((term, i) => {
      const builder = new BoxBuilder(pen);
      if (i > 0) builder.text('+').skip(space);
      else if (lead) builder.piece(lead).skip(space * 1.3);
      const coefficient = coefficientText(term).trim();
      if (coefficient) builder.text(coefficient).skip(pen.size * 0.045);
      writeFormula(builder, term.formula, pen);
      const box = builder.build(speech);
      return i > 0 ? [gapPiece(space, BEFORE_PLUS, speech), box] : [box];
    });
  const left = side(equation.left, undefined);
  return [...left, gapPiece(space * 1.3, BEFORE_ARROW, speech), ...side(equation.right, arrowPiece(arrow, pen))];
}

/** Height of the plus sign's middle and of the symbol font's arrows, in ems. */
const AXIS = 0.33;
const ARROW_AXIS = 0.259;

/** An arrow long enough to read as one, on the axis of the plus signs. */
export function arrowPiece(arrow: Arrow, pen: Pen): Piece {
  const size = Math.max(pen.measures.floor, pen.size * (arrow === 'forward' ? 0.95 : 1.3));
  const text = arrow === 'forward' ? '⟶' : '⇌';
  return new BoxBuilder(pen).text(text, { face: 'symbol', size, rise: AXIS * pen.size - ARROW_AXIS * size }).build();
}
