import type { SpeciesKey } from '../../chemistry/formula.ts';
import { relocated } from '../../chemistry/parse-equation.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';
import { Rational } from '../../exact/rational.ts';
import { badValue } from '../option.ts';

/** Longer numbers than this are nobody's measurement. */
const LONGEST = 30;

/**
 * What was typed after an option that gives a value to a species, `Zn=1.5`, once or more.
 * @param option its name, for what is said of a fault
 * @throws Fault `bad-option` or `bad-formula`, underlined as it was typed
 */
export function valuesBySpecies(texts: readonly string[], option: string): Map<SpeciesKey, Rational> {
  const values = new Map<SpeciesKey, Rational>();
  for (const text of texts) {
    const at = text.lastIndexOf('=');
    if (at < 0) throw badValue(option, text, 'a species, `=` and a number, such as `Zn=1.5`');
    const key = speciesAfter(text.slice(0, at), option, text);
    if (values.has(key)) throw badValue(option, text, `one value for \`${key}\``);
    const number = text.slice(at + 1).trim();
    const value = positive(number);
    if (value === undefined) throw badValue(option, text, `a number above zero after the \`=\``);
    values.set(key, value);
  }
  return values;
}

/** The species typed after an option. */
export function speciesAfter(formula: string, option: string, whole: string = formula): SpeciesKey {
  return keyOf(relocated(() => parseFormula(formula), `--${option} ${whole}`, option.length + 3));
}

/** A number above zero as it was typed; undefined for anything else. */
export function positive(text: string): Rational | undefined {
  if (text.length > LONGEST) return undefined;
  try {
    const value = Rational.parse(text);
    return value.sign() > 0 ? value : undefined;
  } catch (error) {
    if (error instanceof Fault) return undefined;
    throw error;
  }
}
