import { asHalf } from '../../chemistry/check-half.ts';
import type { Equation, HalfEquation, Term } from '../../chemistry/equation.ts';
import { halfEquation } from '../../chemistry/half-equation.ts';
import { parseEquation } from '../../chemistry/parse-equation.ts';
import { parseHalfCell } from '../../chemistry/parse-half-cell.ts';
import { type Ambiguous, type Solved, solveEquation } from '../../chemistry/solve-equation.ts';
import { lowestTerms } from '../../chemistry/terms.ts';
import { writeEquation } from '../../chemistry/write-equation.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';

/** What `couplet balance --json` prints of one input. */
export interface BalanceAnswer {
  readonly input: string;
  readonly kind: Solved['kind'];
  readonly equation: string;
  /** coefficients by species, electrons included */
  readonly reactants: Readonly<Record<string, string>>;
  readonly products: Readonly<Record<string, string>>;
  /** null where oxidation numbers are not decided */
  readonly electrons: string | null;
  readonly oxidised: string | null;
  readonly reduced: string | null;
}

/** An input with its balanced equation. */
export interface Balanced {
  readonly input: string;
  readonly medium: 'acid' | 'alkali';
  readonly solved: Solved;
}

/** Hydroxide ions that were typed: no acid completes such an equation. */
const HYDROXIDE = /(?<![A-Za-z)\]])OH(\^-|⁻)/;

/**
 * Balances an equation, an ionic equation without water and H⁺ or OH⁻, or a couple.
 * @param couples none, or the two that take part where conservation allows several answers
 * @throws Fault `cannot-balance`, `not-unique`, `wrong-couples`, or a fault of the text
 */
export function balance(input: string, asked: 'acid' | 'alkali', couples: readonly string[] = []): Balanced {
  const medium = HYDROXIDE.test(input) ? 'alkali' : asked;
  const halves = couples.length === 0 ? undefined : halvesIn(input, medium, couples);
  const solved = solveEquation(input, medium, halves);
  if (solved.kind === 'many') throw notUnique(input, solved);
  if (!halves) return { input, medium, solved };
  checkHolds(solved.equation, input);
  return { input, medium, solved: { ...solved, equation: inOrder(solved.equation, parseEquation(input)) } };
}

export function balanceAnswer({ input, solved }: Balanced): BalanceAnswer {
  const { kind, equation, electrons, oxidised, reduced } = solved;
  return {
    input,
    kind,
    equation: writeEquation(equation),
    reactants: coefficients(equation.left),
    products: coefficients(equation.right),
    electrons: electrons?.toString() ?? null,
    oxidised: oxidised.map(keyOf).join(', ') || null,
    reduced: reduced.map(keyOf).join(', ') || null,
  };
}

function coefficients(terms: readonly Term[]): Record<string, string> {
  return Object.fromEntries(terms.map(({ formula, coefficient }) => [keyOf(formula), coefficient.toString()]));
}

function notUnique(input: string, { solutions }: Ambiguous): Fault {
  const shown = solutions.map((each) => `\`${writeEquation(each)}\``).join(' and ');
  const ask = 'name the two couples that take part, as in `--couple MnO4^-/Mn^2+ --couple O2/H2O2`';
  return new Fault('not-unique', `more than one answer balances, such as ${shown}; ${ask}`, whole(input));
}

const whole = (text: string) => ({ text, at: 0, length: text.length });

/** The reduction and the oxidation that two couples make of an equation. */
function halvesIn(input: string, medium: 'acid' | 'alkali', couples: readonly string[]): [HalfEquation, HalfEquation] {
  const sides = sidesOf(parseEquation(input));
  const halves = couples.map((text) => {
    const { oxidised, reduced, half, medium: own } = parseHalfCell(text);
    const [up, down] = [keyOf(oxidised), keyOf(reduced)];
    return {
      half: half ?? asHalf(lowestTerms(halfEquation(oxidised, reduced, own ?? medium))),
      falls: sides.left.has(up) && sides.right.has(down),
      rises: sides.left.has(down) && sides.right.has(up),
    };
  });
  const [reduction, oxidation] = [halves.find(({ falls }) => falls), halves.find(({ rises }) => rises)];
  if (halves.length === 2 && reduction && oxidation) return [reduction.half, oxidation.half];
  const expected = 'expected two couples, one that the equation reduces and one that it oxidises';
  throw new Fault('wrong-couples', `${expected}, found ${couples.map((each) => `\`${each}\``).join(' and ')}`, whole(input));
}

/** What was typed first, in its order; then what was added. */
function inOrder(equation: Equation, typed: Equation): Equation {
  const sorted = (terms: readonly Term[], order: readonly Term[]) => {
    const keys = order.map(({ formula }) => keyOf(formula));
    const rank = ({ formula }: Term) => (keys.includes(keyOf(formula)) ? keys.indexOf(keyOf(formula)) : keys.length);
    return [...terms].sort((one, other) => rank(one) - rank(other));
  };
  return { left: sorted(equation.left, typed.left), right: sorted(equation.right, typed.right) };
}

function sidesOf({ left, right }: Equation) {
  const keys = (terms: readonly Term[]) => new Set(terms.map(({ formula }) => keyOf(formula)));
  return { left: keys(left), right: keys(right) };
}

const SOLVENT: ReadonlySet<string> = new Set(['H2O', 'H^+', 'OH^-', 'e^-']);

/** Every species that was typed stands in the answer, on its side. */
function checkHolds(equation: Equation, input: string): void {
  const [typed, found] = [sidesOf(parseEquation(input)), sidesOf(equation)];
  for (const side of ['left', 'right'] as const) {
    const lost = [...typed[side]].find((key) => !SOLVENT.has(key) && !found[side].has(key));
    if (lost !== undefined)
      throw new Fault(
        'wrong-couples',
        `with these couples \`${lost}\` takes no part: \`${writeEquation(equation)}\``,
        whole(input),
      );
  }
}
