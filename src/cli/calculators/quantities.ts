import { type Decimal, figuresOf, parseDecimal } from '../../exact/decimal.ts';
import { Fault, Faults } from '../../exact/fault.ts';
import type { Rational } from '../../exact/rational.ts';
import { didYouMean } from '../did-you-mean.ts';
import { positive } from './values-by-species.ts';

/** The numbers a titration can be worked out from, and their units. */
export const NUMBERS = {
  'titrant-concentration': 'mol dm^-3',
  titre: 'cm^3',
  aliquot: 'cm^3',
  'analyte-concentration': 'mol dm^-3',
  flask: 'cm^3',
  taken: 'cm^3',
  sample: 'g',
  'molar-mass': 'g mol^-1',
  ratio: '',
  'per-analyte': '',
} as const;

/** What else can be named: species, a formula, and a list of titres. */
const TEXTS = ['titrant', 'analyte', 'sought', 'titres'] as const;

export type NumberName = keyof typeof NUMBERS;
export type TextName = (typeof TEXTS)[number];

/** A number as it was typed, and the figures it shows; counts show none. */
export interface Quantity {
  readonly value: Rational;
  readonly typed: string;
  readonly figures?: number;
}

/** Quantities by name, as typed. */
export interface Quantities {
  readonly numbers: ReadonlyMap<NumberName, Quantity>;
  readonly texts: ReadonlyMap<TextName, string>;
}

/**
 * Reads `titre=23.40`, `titrant=MnO4^-` …
 * @throws Fault `bad-quantity`, `unknown-quantity`, `doubled-quantity`, or Faults when several are wrong
 */
export function readQuantities(texts: readonly string[]): Quantities {
  const [numbers, words, faults] = [new Map<NumberName, Quantity>(), new Map<TextName, string>(), [] as Fault[]];
  for (const text of texts) {
    const at = text.indexOf('=');
    const name = text.slice(0, Math.max(at, 0)).trim();
    const value = text.slice(at + 1).trim();
    if (at < 0) faults.push(bad(text, `expected a name, \`=\` and a value, such as \`titre=23.40\`, found \`${text}\``));
    else if (numbers.has(name as NumberName) || words.has(name as TextName))
      faults.push(new Fault('doubled-quantity', `expected \`${name}\` once`, place(text, 0, at)));
    else if (isText(name)) words.set(name, value);
    else if (isNumber(name)) {
      const quantity = quantityOf(value, NUMBERS[name] === '');
      if (quantity) numbers.set(name, quantity);
      else faults.push(bad(text, `expected a number above zero after \`${name}=\`, found \`${value}\``, at + 1));
    } else faults.push(unknown(name, text, at));
  }
  if (faults.length === 1) throw faults[0]!;
  if (faults.length > 1) throw new Faults(faults);
  return { numbers, texts: words };
}

const isText = (name: string): name is TextName => TEXTS.some((known) => known === name);
const isNumber = (name: string): name is NumberName => Object.hasOwn(NUMBERS, name);
const place = (text: string, at: number, length: number) => ({ text, at, length });

function bad(text: string, message: string, at = 0): Fault {
  return new Fault('bad-quantity', message, place(text, at, Math.max(1, text.length - at)));
}

function unknown(name: string, text: string, at: number): Fault {
  const known = [...TEXTS, ...Object.keys(NUMBERS)];
  const hint = didYouMean(name, known) || `; known are ${known.join(', ')}`;
  return new Fault('unknown-quantity', `no quantity is called \`${name}\`${hint}`, place(text, 0, Math.max(1, at)));
}

/** A decimal with its figures; a count may also be a fraction. */
function quantityOf(text: string, isCount: boolean): Quantity | undefined {
  const value = positive(text);
  if (value === undefined) return undefined;
  if (isCount) return { value, typed: text };
  const isDecimal = /^\+?\d+(\.\d+)?$/.test(text);
  return isDecimal ? { value, typed: text, figures: figuresOf(parseDecimal(text)) } : { value, typed: text };
}

/** `23.90,23.40,23.45` @throws Fault `bad-quantity` */
export function readTitres(text: string): Decimal[] {
  return text.split(',').map((part) => {
    const titre = part.trim();
    if (!/^\d+(\.\d+)?$/.test(titre) || positive(titre) === undefined)
      throw bad(`titres=${text}`, `expected titres in cm^3 such as \`titres=23.90,23.40,23.45\`, found \`${titre}\``, 7);
    return parseDecimal(titre);
  });
}
