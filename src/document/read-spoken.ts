import type { Equation, Term } from '../chemistry/equation.ts';
import type { Formula, FormulaNode, FormulaUnit, State } from '../chemistry/formula.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Arrow } from './inline.ts';
import { STATE_WORDS } from './spoken-words.ts';

const ELECTRON: Formula = { units: [], charge: -1 };

/**
 * Reads what `speakFormula` says, so that alternative text can be held against the species it stands for.
 * @throws Fault `bad-spoken` when it is not such a text
 */
export function readSpokenFormula(spoken: string): Formula {
  const [body = '', ...rest] = spoken.split(', ');
  let formula: Formula = /^electrons?$/.test(body) ? ELECTRON : { units: readUnits(body, spoken), charge: 0 };
  for (const part of rest) formula = withDetail(formula, part, spoken);
  return formula;
}

/** A charge or a state after the body. */
function withDetail(formula: Formula, part: string, whole: string): Formula {
  const charge = /^charge (\d+) (plus|minus)$/.exec(part);
  if (charge) return { ...formula, charge: charge[2] === 'plus' ? Number(charge[1]) : -Number(charge[1]) };
  const state = (Object.keys(STATE_WORDS) as State[]).find((key) => STATE_WORDS[key] === part);
  if (!state) throw bad(whole, `expected a charge or a state, found \`${part}\``);
  return { ...formula, state };
}

function readUnits(body: string, whole: string): FormulaUnit[] {
  return body.split(' dot ').map((text, i) => {
    const lead = (i === 0 ? /^(\d+) times (.*)$/ : /^(\d+) (.*)$/).exec(text);
    const words = (lead ? lead[2]! : text).split(' ');
    const nodes = readNodes(words, whole);
    if (words.length > 0) throw bad(whole, `expected an element or a bracket, found \`${words[0]}\``);
    return { count: lead ? Number(lead[1]) : 1, nodes };
  });
}

/** Takes nodes from the front of the words until a closing bracket or the end. */
function readNodes(words: string[], whole: string): FormulaNode[] {
  const nodes: FormulaNode[] = [];
  while (words.length > 0 && words[0] !== 'close') {
    const node = words[0] === 'open' ? readGroup(words, whole) : readElement(words, whole);
    nodes.push({ ...node, count: /^\d+$/.test(words[0] ?? '') ? Number(words.shift()) : 1 });
  }
  return nodes;
}

function readGroup(words: string[], whole: string): FormulaNode {
  const square = words[1] === 'square';
  const bracket = square ? ['square', 'bracket'] : ['bracket'];
  take(words, ['open', ...bracket], whole);
  const nodes = readNodes(words, whole);
  take(words, ['close', ...bracket], whole);
  return { kind: 'group', bracket: square ? '[' : '(', nodes, count: 1 };
}

function take(words: string[], expected: readonly string[], whole: string): void {
  for (const word of expected) if (words.shift() !== word) throw bad(whole, `expected \`${expected.join(' ')}\``);
}

function readElement(words: string[], whole: string): FormulaNode {
  const first = words.shift() ?? '';
  if (!/^[A-Z]$/.test(first)) throw bad(whole, `expected a capital letter, found \`${first}\``);
  if (words[0] === 'small') words.shift();
  const second = /^[a-z]$/.test(words[0] ?? '') ? words.shift() : '';
  return { kind: 'element', symbol: `${first}${second}`, count: 1 };
}

/**
 * Reads what `speakEquation` says.
 * @throws Fault `bad-spoken` when it is not such a text
 */
export function readSpokenEquation(spoken: string): { equation: Equation; arrow: Arrow } {
  const match = /^(.*), (gives|in equilibrium with) (.*)$/.exec(spoken);
  if (!match) throw bad(spoken, 'expected two sides joined by `gives` or `in equilibrium with`');
  const side = (text: string): Term[] => text.split(', plus ').map(readTerm);
  return { equation: { left: side(match[1]!), right: side(match[3]!) }, arrow: match[2] === 'gives' ? 'forward' : 'reversible' };
}

function readTerm(spoken: string): Term {
  const match = /^(\d+)(?: over (\d+))? (?!times )(.*)$/.exec(spoken);
  if (!match) return { coefficient: Rational.of(1), formula: readSpokenFormula(spoken) };
  return { coefficient: Rational.of(BigInt(match[1]!), BigInt(match[2] ?? '1')), formula: readSpokenFormula(match[3]!) };
}

function bad(text: string, message: string): Fault {
  return new Fault('bad-spoken', `${message} in \`${text}\``, { text });
}
