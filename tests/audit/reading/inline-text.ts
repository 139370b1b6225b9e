import type { Equation, Term } from '../../../src/chemistry/equation.ts';
import type { Formula, FormulaNode } from '../../../src/chemistry/formula.ts';
import type { Plain, PlainInline } from '../plain.ts';

/** What a formula shows on the page, in one line: `Cr2O7^2-`, `[Ag(NH3)2]^+(aq)`, `CuSO4·5H2O`, `e^-`. */
export function formulaText({ units, charge, state }: Plain<Formula>): string {
  const body = units.map(({ count, nodes }) => `${count === 1 ? '' : count}${nodes.map(nodeText).join('')}`).join('·') || 'e';
  const size = Math.abs(charge) === 1 ? '' : Math.abs(charge);
  return `${body}${charge === 0 ? '' : `^${size}${charge > 0 ? '+' : '-'}`}${state ? `(${state})` : ''}`;
}

function nodeText(node: Plain<FormulaNode>): string {
  const count = node.count === 1 ? '' : String(node.count);
  if (node.kind === 'element') return node.symbol + count;
  return `${node.bracket}${node.nodes.map(nodeText).join('')}${node.bracket === '(' ? ')' : ']'}${count}`;
}

/** What an equation shows: `2 Fe^3+ + 2 I^- -> 2 Fe^2+ + I2`; `<=>` for a reversible one. */
export function equationText({ left, right }: Plain<Equation>, arrow: 'forward' | 'reversible'): string {
  return `${sideText(left)} ${arrow === 'forward' ? '->' : '<=>'} ${sideText(right)}`;
}

function sideText(terms: readonly Plain<Term>[]): string {
  return terms
    .map(({ coefficient, formula }) => (coefficient === '1' ? formulaText(formula) : `${coefficient} ${formulaText(formula)}`))
    .join(' + ');
}

/** A run of prose as one line of plain text: what a reader sees, chemistry included. */
export function runText(run: readonly PlainInline[]): string {
  return run.map(inlineText).join('');
}

function inlineText(inline: PlainInline): string {
  switch (inline.kind) {
    case 'text':
      return inline.text;
    case 'formula':
      return formulaText(inline.formula);
    case 'equation':
      return equationText(inline.equation, inline.arrow);
    case 'quantity':
      return [inline.number, inline.unit].filter((part) => part !== '').join(' ');
    case 'symbol': {
      const of = inline.of ? `(${runText(inline.of)})` : '';
      return `${inline.letter}${inline.raised ?? ''}${inline.lowered ?? ''}${of}`;
    }
    case 'fraction':
      return `((${runText(inline.above)})/(${runText(inline.below)}))`;
    case 'gap':
      return '……';
  }
}
