import { Rational } from '../exact/rational.ts';
import { elementOf, isMetal } from './elements.ts';

/** What the rules say of a group of atoms: a number for each element and the rules used, or why they do not decide. */
export type Ruling =
  | { readonly kind: 'decided'; readonly numbers: ReadonlyMap<string, Rational>; readonly rules: readonly string[] }
  | { readonly kind: 'open'; readonly because: string };

/** A rule: gives an element its usual number, or leaves it. */
interface Rule {
  /** true for a rule that is used only once polyatomic ions have been taken apart */
  readonly weak?: boolean;
  readonly says: (symbol: string, elements: readonly string[]) => number | undefined;
  readonly text: (symbol: string, elements: readonly string[]) => string;
}

const always = (symbols: string, number: number, text: (symbol: string) => string, weak = false): Rule => ({
  weak,
  says: (symbol) => (symbols.split(' ').includes(symbol) ? number : undefined),
  text,
});
const nameOf = (symbol: string) => elementOf(symbol).name;

const usually = (symbol: string, number: number): Rule =>
  always(
    symbol,
    number,
    () => `${nameOf(symbol)} is ${oxidationText(Rational.of(number))} with less electronegative elements`,
    true,
  );

/** Hydrogen is −1 with metals and boron alone. */
const isHydride = (elements: readonly string[]) =>
  elements.every((symbol) => symbol === 'H' || symbol === 'B' || isMetal(symbol));

/**
 * In order: an earlier rule wins, and the last element left follows by difference. That is why oxygen comes out as −1 in
 * peroxides, −½ in superoxides and +2 in OF₂. (Order of rules: common practice; the more electronegative element takes its
 * usual negative number.)
 */
const RULES: readonly Rule[] = [
  always('F', -1, () => 'fluorine is −1 in its compounds'),
  {
    says: (symbol) => (elementOf(symbol).group === 1 && symbol !== 'H' ? 1 : undefined),
    text: (symbol) => `${nameOf(symbol)}, in group 1, is +1`,
  },
  { says: (symbol) => (elementOf(symbol).group === 2 ? 2 : undefined), text: (symbol) => `${nameOf(symbol)}, in group 2, is +2` },
  always('Al', 3, () => 'aluminium is +3'),
  {
    says: (symbol, elements) => (symbol === 'H' ? (isHydride(elements) ? -1 : 1) : undefined),
    text: (_, elements) => (isHydride(elements) ? 'hydrogen is −1 in the hydrides of metals' : 'hydrogen is +1 with non-metals'),
  },
  always('O', -2, () => 'oxygen is −2, except in peroxides, superoxides and with fluorine'),
  ...['Cl', 'Br', 'I'].map((symbol) => usually(symbol, -1)),
  usually('N', -3),
  usually('S', -2),
  usually('C', -4),
  always('Zn Cd', 2, (symbol) => `${nameOf(symbol)} is +2`, true),
  always('Ag', 1, () => 'silver is +1', true),
];

/**
 * Applies the rules in order to atoms that bear a charge together; the last element follows by difference.
 * @param atoms number of atoms by element; charge not included
 * @param weak whether the weak rules are used too
 */
export function applyRules(atoms: ReadonlyMap<string, number>, charge: number, weak: boolean): Ruling {
  const elements = [...atoms.keys()];
  const numbers = new Map<string, Rational>();
  const rules: string[] = [];
  for (const rule of RULES.filter((each) => weak || each.weak !== true)) {
    for (const symbol of elements) {
      if (numbers.has(symbol) || numbers.size === elements.length - 1) continue;
      const number = rule.says(symbol, elements);
      if (number === undefined) continue;
      numbers.set(symbol, Rational.of(number));
      rules.push(rule.text(symbol, elements));
    }
  }
  const open = elements.filter((symbol) => !numbers.has(symbol));
  if (open.length !== 1) return { kind: 'open', because: `no rule decides between ${open.map(nameOf).join(' and ')}` };
  const last = open[0]!;
  const others = [...numbers].reduce(
    (sum, [symbol, number]) => sum.plus(number.times(Rational.of(atoms.get(symbol)!))),
    Rational.zero,
  );
  const number = Rational.of(charge)
    .minus(others)
    .over(Rational.of(atoms.get(last)!));
  const excess = beyondOuterElectrons(last, number);
  if (excess) return { kind: 'open', because: excess };
  numbers.set(last, number);
  return { kind: 'decided', numbers, rules: [...rules, ...byDifference(last, number, charge, elements.length)] };
}

/** An element cannot lose more than its outer electrons, nor a non-metal gain more than fill its shell. */
function beyondOuterElectrons(symbol: string, number: Rational): string | undefined {
  const { group } = elementOf(symbol);
  if (group === undefined) return undefined;
  const outer = group > 12 ? group - 10 : group;
  if (number.compare(Rational.of(outer)) > 0 || (group > 13 && number.compare(Rational.of(group - 18)) < 0)) {
    return `the rules would give ${nameOf(symbol)} ${oxidationText(number)}, which it cannot have`;
  }
  return undefined;
}

function byDifference(symbol: string, number: Rational, charge: number, elements: number): string[] {
  const special = symbol === 'O' ? oxygenSpecial(number) : symbol === 'H' ? hydrogenSpecial(number) : [];
  if (elements === 1) return special;
  const sum = charge === 0 ? 'zero' : `the charge, ${chargeText(charge)}`;
  return [
    `the numbers add up to ${sum}, so ${nameOf(symbol)} is ${oxidationText(number)}${number.isInteger() ? '' : ' on average'}`,
    ...special,
  ];
}

function hydrogenSpecial(number: Rational): string[] {
  return number.equals(Rational.of(-1)) ? ['this is a hydride: with metals and boron hydrogen is −1'] : [];
}

function oxygenSpecial(number: Rational): string[] {
  if (number.equals(Rational.of(-1))) return ['this is a peroxide'];
  if (number.equals(Rational.of(-1, 2))) return ['this is a superoxide'];
  return [];
}

/** An oxidation number with its sign and a true minus: `+7`, `−2`, `0`, `+5/2`. */
export function oxidationText(number: Rational): string {
  const sign = number.sign() > 0 ? '+' : number.sign() < 0 ? '\u2212' : '';
  return `${sign}${number.abs()}`;
}

/** A charge as it is spoken of: `2−`, `+`, `3+`. */
export function chargeText(charge: number): string {
  const size = Math.abs(charge);
  return `${size === 1 ? '1' : size}${charge > 0 ? '+' : '\u2212'}`;
}
