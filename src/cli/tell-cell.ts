import { THRESHOLD } from '../chemistry/cell.ts';
import { CODATA } from '../chemistry/constants.ts';
import type { Couple } from '../chemistry/couple.ts';
import { equilibriumConstant, log10Of } from '../chemistry/energetics.ts';
import type { Equation } from '../chemistry/equation.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { scientificText } from '../chemistry/logarithm.ts';
import { reverseEquation } from '../chemistry/terms.ts';
import { writeEquation } from '../chemistry/write-equation.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { type Decimal, decimalAt, decimalWithFigures, printDecimal } from '../exact/decimal.ts';
import { printNumber } from '../exact/print-number.ts';
import { Rational } from '../exact/rational.ts';
import type { WorkedCell } from './calculators/cell.ts';
import { columns, exactText, lines, volts } from './tell.ts';

/** The cell explained: half-cells, e.m.f., equation, representation, ΔG°, K and, away from standard conditions, the Nernst equation. */
export function tellCell(worked: WorkedCell, table: string): string {
  const { negative, positive, combined } = worked.cell;
  return lines(
    columns(
      [
        [
          'negative, oxidation:',
          writeEquation(reverseEquation(negative.half)),
          `E° = ${volts(negative.stored)}`,
          ownMark(negative),
        ],
        ['positive, reduction:', writeEquation(positive.half), `E° = ${volts(positive.stored)}`, ownMark(positive)],
      ],
      '',
    ),
    '',
    emfLine(worked),
    feasibility(worked),
    '',
    `Equation:  ${writeEquation(combined.equation)}  (${passed(combined.electrons)})`,
    `Cell:      ${worked.notation}`,
    energies(worked),
    nernstLines(worked),
    '',
    `Potentials are those stored in the table in force (${table}), not rounded to two decimals as on a sheet. F and R are the exact SI values.`,
  );
}

function ownMark({ source }: Couple): string {
  return source === 'given by the user' ? '(as given)' : '';
}

const passed = (electrons: Rational): string => `${electrons} electron${electrons.equals(Rational.one) ? '' : 's'} passed`;

function emfLine({ cell: { negative, positive, emf } }: WorkedCell): string {
  const exact = volts({ value: emf.value, places: Math.max(negative.stored.places, positive.stored.places) });
  const rounded = volts(decimalAt(emf.value, emf.places));
  const working = `E°cell = E°(positive) − E°(negative) = ${printDecimal(positive.stored, true)} − ${bracketed(negative.stored)} = ${exact}`;
  return exact === rounded ? working : `${working}, that is ${rounded}`;
}

/** A potential inside a sum or product; a negative one in brackets. */
function bracketed(potential: Decimal, signed = true): string {
  const text = printDecimal(potential, signed);
  return potential.value.sign() < 0 ? `(${text})` : text;
}

function feasibility({ cell: { emf, feasible } }: WorkedCell): string {
  const small = emf.value.abs().compare(THRESHOLD) < 0 ? ' It is below 0.10 V, so in practice concentrations decide.' : '';
  if (emf.value.isZero()) return 'E°cell is zero: under standard conditions neither direction is favoured.';
  const verdict = feasible
    ? 'E°cell is positive: the reaction is feasible under standard conditions.'
    : 'E°cell is negative: the reaction as written is not feasible under standard conditions; its reverse is.';
  return `${verdict}${small}`;
}

function energies({ cell: { combined, emf }, gibbs, lnK, temperature }: WorkedCell): string[] {
  const n = combined.electrons.toString();
  const faraday = printDecimal(decimalAt(CODATA.faraday, 2));
  const kilojoules = printNumber(decimalWithFigures(gibbs.over(Rational.of(1000)), 4));
  const log10 = decimalAt(Rational.parse(log10Of(lnK).toFixed(6)), 2);
  const constant = scientificText(equilibriumConstant(lnK), 2).replace('e', ' × 10^').replace('^+', '^');
  const volt = bracketed({ value: emf.value, places: Math.max(emf.places, 4) }, false);
  return [
    `ΔG°      = −nFE°cell = −${n} × ${faraday} × ${volt} J mol^-1 = ${kilojoules} kJ mol^-1 for the equation as written`,
    `log10 K  = nFE°cell / (RT ln 10) = ${printDecimal(log10)} at ${exactText(temperature)} K (K = ${constant})`,
  ];
}

function nernstLines({ cell: { combined, emf }, activities, quotient, temperature, nernst }: WorkedCell): string[] {
  if (activities.size === 0) return [];
  const slope = CODATA.gas.times(temperature).over(combined.electrons.times(CODATA.faraday));
  const q = printNumber(decimalWithFigures(quotient, 4));
  const value = printDecimal(decimalAt(Rational.parse(nernst.toFixed(9)), Math.max(3, emf.places)), true);
  const volt = printDecimal({ value: emf.value, places: Math.max(emf.places, 4) }, true);
  return [
    '',
    `Away from standard conditions (E° taken as it is at 298 K):`,
    `Q = ${quotientText(combined.equation)} = ${q}`,
    `E = E°cell − (RT/nF) ln Q = ${volt} − ${printNumber(decimalWithFigures(slope, 4))} × ln(${q}) = ${value} V`,
  ];
}

/** `[Zn^2+] / [Cu^2+]`; gases as pressures, what counts as 1 left out. */
function quotientText({ left, right }: Equation): string {
  const side = (terms: Equation['left']) =>
    terms
      .filter(({ formula }) => !isElectron(formula) && keyOf(formula) !== 'H2O' && formula.state !== 's' && formula.state !== 'l')
      .map(({ formula, coefficient }) => {
        const shown = formula.state === 'g' ? `p(${keyOf(formula)})` : `[${keyOf(formula)}]`;
        return coefficient.equals(Rational.one) ? shown : `${shown}^${coefficient}`;
      });
  const [over, under] = [side(right), side(left)];
  const product = (parts: readonly string[]) => (parts.length === 0 ? '1' : parts.join(' '));
  if (under.length === 0) return product(over);
  return `${product(over)} / ${under.length > 1 ? `(${product(under)})` : product(under)}`;
}
