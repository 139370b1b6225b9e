import type { Equation, Term } from '../../chemistry/equation.ts';
import type { Formula, FormulaNode } from '../../chemistry/formula.ts';
import type { Arrow, PhysicalSymbol } from '../../document/inline.ts';

const RAISED: Readonly<Record<string, string>> = {
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
  '+': '⁺',
  '-': '⁻',
  '\u2212': '⁻',
};
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/** Caret text with its powers as superscript characters: `mol dm^-3` is `mol dm⁻³`. */
export function raisedText(text: string): string {
  return text.replace(/\^([+\u2212-]?[\d.]+)/g, (_, power: string) => Array.from(power, (c) => RAISED[c] ?? c).join(''));
}

/** The characters a formula's glyphs stand for, so that copied text tells VO₂⁺ from VO²⁺. */
export function formulaText(formula: Formula): string {
  const body = formula.units.map((unit) => `${unit.count === 1 ? '' : unit.count}${nodesText(unit.nodes)}`).join('·');
  const state = formula.state ? `(${formula.state})` : '';
  return `${body || 'e'}${chargeText(formula.charge)}${state}`;
}

/** Charge as superscript characters, magnitude first: `³⁻`, `⁺`. */
function chargeText(charge: number): string {
  if (charge === 0) return '';
  const size = Math.abs(charge);
  return raisedText(`^${size === 1 ? '' : size}`).replace('^', '') + (charge > 0 ? '⁺' : '⁻');
}

function nodesText(nodes: readonly FormulaNode[]): string {
  return nodes.map((node) => nodeBody(node) + countText(node.count)).join('');
}

function nodeBody(node: FormulaNode): string {
  if (node.kind === 'element') return node.symbol;
  return node.bracket === '[' ? `[${nodesText(node.nodes)}]` : `(${nodesText(node.nodes)})`;
}

function countText(count: number): string {
  return count === 1 ? '' : Array.from(String(count), (digit) => LOWERED[Number(digit)]).join('');
}

/** The characters of a symbol with its argument, `n(VO₂⁺)`; nothing when its argument is more than words and species. */
export function symbolText({ letter, raised = '', lowered = '', of = [] }: PhysicalSymbol): string | undefined {
  const argument = of.map((each) => {
    if (each.kind === 'formula') return formulaText(each.formula);
    return each.kind === 'text' ? each.text : undefined;
  });
  return argument.includes(undefined) ? undefined : `${letter}${raised}${lowered}(${argument.join('')})`;
}

export function equationText(equation: Equation, arrow: Arrow): string {
  const side = (terms: readonly Term[]): string =>
    terms.map((term) => coefficientText(term) + formulaText(term.formula)).join(' + ');
  return `${side(equation.left)} ${arrow === 'forward' ? '→' : '⇌'} ${side(equation.right)}`;
}

/** Coefficient as printed before a formula: nothing for one, `½` for a half, `5/2 ` else. */
export function coefficientText({ coefficient }: Term): string {
  if (coefficient.isInteger()) return coefficient.n === 1n ? '' : String(coefficient.n);
  return coefficient.n === 1n && coefficient.d === 2n ? '½' : `${coefficient} `;
}
