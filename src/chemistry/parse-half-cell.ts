import { type Decimal, decimalAt, parseDecimal } from '../exact/decimal.ts';
import { Fault } from '../exact/fault.ts';
import { asHalf } from './check-half.ts';
import type { Couple } from './couple.ts';
import type { HalfEquation } from './equation.ts';
import type { Formula } from './formula.ts';
import { isElectron } from './formula-parts.ts';
import { halfEquation } from './half-equation.ts';
import { parseEquation, relocated } from './parse-equation.ts';
import { parseFormula } from './parse-formula.ts';
import { keyOf } from './write-formula.ts';

/** A half-cell as typed: a couple or a half-equation, with or without a potential of its own. */
export interface HalfCellText {
  readonly oxidised: Formula;
  readonly reduced: Formula;
  /** `@acid` or `@alkali` after a couple */
  readonly medium?: 'acid' | 'alkali';
  /** present when a half-equation was typed */
  readonly half?: HalfEquation;
  /** V */
  readonly potential?: Decimal;
}

/**
 * Reads `Cu^2+/Cu`, `MnO4^-/MnO2@alkali`, `Ag^+/Ag=0.7996`, or `Ag^+ + e^- <=> Ag`, with `=0.80` after it when its potential
 * is given.
 * @throws Fault `bad-half-cell`, `bad-formula`, `bad-equation`, `not-a-number`, or what `checkHalf` finds
 */
export function parseHalfCell(text: string): HalfCellText {
  const value = /=\s*([+\-−]?\d+(?:\.\d+)?)\s*$/.exec(text);
  const body = value ? text.slice(0, value.index) : text;
  const potential = value ? { potential: parseDecimal(value[1]!) } : {};
  if (/<=>|⇌|→|⟶|->|=/.test(body)) return { ...readHalf(body, text), ...potential };
  const couple = /^(.+)\/([^@]+)(?:@(acid|alkali))?\s*$/.exec(body);
  if (!couple) {
    throw new Fault('bad-half-cell', 'expected a couple such as `Cu^2+/Cu`, or a half-equation', {
      text,
      at: 0,
      length: Math.max(1, body.length),
    });
  }
  const oxidised = relocated(() => parseFormula(couple[1]!), text, 0);
  const reduced = relocated(() => parseFormula(couple[2]!), text, couple[1]!.length + 1);
  const medium = couple[3] ? { medium: couple[3] as 'acid' | 'alkali' } : {};
  return { oxidised, reduced, ...medium, ...potential };
}

function readHalf(body: string, text: string): Pick<HalfCellText, 'oxidised' | 'reduced' | 'half'> {
  const half = asHalf(relocated(() => parseEquation(body), text, 0));
  const main = (terms: HalfEquation['left']) => {
    const real = terms.map((term) => term.formula).filter((formula) => !isElectron(formula));
    return real.find((formula) => !['H2O', 'H^+', 'OH^-'].includes(keyOf(formula))) ?? real[0]!;
  };
  return { oxidised: main(half.left), reduced: main(half.right), half };
}

/**
 * A couple of the user's own, from the text of a half-cell that has a potential.
 * @throws Fault `no-potential` without one, `cannot-balance` when the half-equation cannot be built
 */
export function ownCouple(typed: HalfCellText): Couple {
  const { oxidised, reduced, potential } = typed;
  const id = `${keyOf(oxidised)}/${keyOf(reduced)}`;
  if (!potential)
    throw new Fault('no-potential', `no potential is known for \`${id}\`: write \`${id}=\` and its value in volts`, {});
  const half = typed.half ?? halfEquation(oxidised, reduced, typed.medium ?? 'acid');
  const keys = [...half.left, ...half.right].map((term) => keyOf(term.formula));
  return {
    id: typed.medium ? `${id}@${typed.medium}` : id,
    oxidised,
    reduced,
    oxidisedKey: keyOf(oxidised),
    reducedKey: keyOf(reduced),
    half,
    stored: potential,
    printed: decimalAt(potential.value, 2),
    medium: keys.includes('H^+') ? 'acid' : keys.includes('OH^-') ? 'alkali' : 'neutral',
    usualOxidant: [],
    usualReductant: [],
    calculationOnly: false,
    source: 'given by the user',
  };
}
