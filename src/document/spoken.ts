import type { Equation, Term } from '../chemistry/equation.ts';
import type { Formula, FormulaNode } from '../chemistry/formula.ts';
import type { Arrow, Inline } from './inline.ts';
import { STATE_WORDS } from './spoken-words.ts';

/**
 * A formula as it is read out: `M small n O 4, charge 1 minus`. A small letter is always named as small, so that cobalt (`C small o`) and
 * carbon monoxide (`C O`) differ by ear, and no symbol is told otherwise than its neighbour. `readSpokenFormula` is the inverse.
 */
export function speakFormula(formula: Formula): string {
  const units = formula.units.map((unit, i) => `${speakUnitCount(unit.count, i)}${speakNodes(unit.nodes)}`);
  const body = units.length > 0 ? units.join(' dot ') : 'electron';
  return body + speakCharge(formula) + (formula.state ? `, ${STATE_WORDS[formula.state]}` : '');
}

function speakUnitCount(count: number, index: number): string {
  if (count === 1) return '';
  return index === 0 ? `${count} times ` : `${count} `;
}

function speakCharge({ units, charge }: Formula): string {
  if (charge === 0 || (units.length === 0 && charge === -1)) return '';
  return `, charge ${Math.abs(charge)} ${charge > 0 ? 'plus' : 'minus'}`;
}

function speakNodes(nodes: readonly FormulaNode[]): string {
  return nodes
    .map(
      (node) =>
        `${node.kind === 'element' ? speakSymbol(node.symbol) : speakGroup(node)}${node.count === 1 ? '' : ` ${node.count}`}`,
    )
    .join(' ');
}

function speakGroup(group: Extract<FormulaNode, { kind: 'group' }>): string {
  const name = group.bracket === '[' ? 'square bracket' : 'bracket';
  return `open ${name} ${speakNodes(group.nodes)} close ${name}`;
}

function speakSymbol(symbol: string): string {
  const [first = '', second] = symbol;
  return second ? `${first} small ${second}` : first;
}

/** An equation as it is read out: `V O 2, charge 1 plus, plus 2 H, charge 1 plus, … gives …`. `readSpokenEquation` is the inverse. */
export function speakEquation(equation: Equation, arrow: Arrow): string {
  const side = (terms: readonly Term[]): string => terms.map(speakTerm).join(', plus ');
  return `${side(equation.left)}, ${arrow === 'forward' ? 'gives' : 'in equilibrium with'} ${side(equation.right)}`;
}

function speakTerm({ coefficient, formula }: Term): string {
  const one = coefficient.n === 1n && coefficient.d === 1n;
  const number = coefficient.isInteger() ? `${coefficient.n}` : `${coefficient.n} over ${coefficient.d}`;
  const spoken = speakFormula(formula);
  if (formula.units.length === 0 && formula.charge === -1)
    return one ? '1 electron' : `${number} ${spoken.replace('electron', 'electrons')}`;
  return one ? spoken : `${number} ${spoken}`;
}

/** A number and its unit as read out: powers in words, `0.0200 mol dm to the minus 3`. */
export function speakQuantity(number: string, unit: string): string {
  const text = [number, unit].filter(Boolean).join(' ');
  return text
    .replace(/\s*×\s*10/, ' times 10')
    .replace(/(?<=[A-Za-z])\^([23])(?!\d)/g, (_, power: string) => (power === '2' ? ' squared' : ' cubed'))
    .replace(
      /\^([+\u2212-]?)([\d.]+)/g,
      (_, sign: string, power: string) => ` to the ${'\u2212-'.includes(sign || '+') ? 'minus ' : ''}${power}`,
    )
    .replace(/(^|\s)[\u2212-](?=\d)/g, '$1minus ')
    .replace(/(^|\s)\+(?=\d)/g, '$1plus ');
}

const RAISED_WORDS: Readonly<Record<string, string>> = { '°': 'standard', '⦵': 'standard' };

/** Any run of inlines as it is read out. */
export function speakInlines(inlines: readonly Inline[]): string {
  return inlines.map(speakInline).join('').replace(/ {2,}/g, ' ').trim();
}

function speakInline(inline: Inline): string {
  switch (inline.kind) {
    case 'text':
      return inline.text;
    case 'formula':
      return speakFormula(inline.formula);
    case 'equation':
      return speakEquation(inline.equation, inline.arrow);
    case 'quantity':
      return speakQuantity(inline.number, inline.unit);
    case 'symbol':
      return speakSymbolInline(inline);
    case 'fraction':
      return ` fraction ${speakInlines(inline.above)} over ${speakInlines(inline.below)} end of fraction `;
    case 'gap':
      return inline.filled ? ` ${speakInlines(inline.filled)} ` : ' blank ';
  }
}

function speakSymbolInline(symbol: Extract<Inline, { kind: 'symbol' }>): string {
  const raised = symbol.raised ? ` ${RAISED_WORDS[symbol.raised] ?? symbol.raised}` : '';
  const lowered = symbol.lowered ? ` ${symbol.lowered}` : '';
  const of = symbol.of ? ` of ${speakInlines(symbol.of)}` : '';
  return `${symbol.letter}${raised}${lowered}${of}`;
}
