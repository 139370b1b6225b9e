import { Rational } from '../exact/rational.ts';
import { hydrogenIon, hydroxide, water } from './common-species.ts';
import type { Medium } from './couple.ts';
import type { Equation } from './equation.ts';
import type { Formula, SpeciesKey } from './formula.ts';
import type { Amount, Present } from './mixture.ts';
import { netAmounts } from './terms.ts';
import { keyOf } from './write-formula.ts';

/** Water and what makes the medium; never listed among the products. */
export const SOLVENT: ReadonlySet<SpeciesKey> = new Set(['H2O', 'H^+', 'OH^-']);

/**
 * Amounts in a beaker while it reacts, and what every species has gained since the start. The one mutable value of the
 * engine.
 */
export class BeakerState {
  readonly #amounts = new Map<SpeciesKey, Present>();
  /** what amounts were given of, as against the excess that a medium brings */
  readonly #given = new Set<SpeciesKey>();
  readonly net = new Map<SpeciesKey, { formula: Formula; net: Rational }>();

  constructor(medium: Medium) {
    this.#set(water, 'excess');
    if (medium === 'acid') this.#set(hydrogenIon, 'excess');
    if (medium === 'alkali' || medium === 'strong-alkali') this.#set(hydroxide, 'excess');
  }

  /**
   * Puts a species in; amounts of the same species add up. The first amount given for H⁺ or OH⁻ replaces the excess of the medium;
   * water stays in excess.
   */
  put(formula: Formula, amount: Amount): void {
    const key = keyOf(formula);
    if (key === 'H2O') return;
    const isFirst = SOLVENT.has(key) && !this.#given.has(key);
    this.#given.add(key);
    const known = isFirst ? undefined : this.#amounts.get(key)?.amount;
    this.#set(formula, known === undefined ? amount : known === 'excess' || amount === 'excess' ? 'excess' : known.plus(amount));
  }

  amountOf(key: SpeciesKey): Amount {
    return this.#amounts.get(key)?.amount ?? Rational.zero;
  }

  has(key: SpeciesKey): boolean {
    return this.#amounts.has(key);
  }

  /** Everything that is there, in the order it came in; the solvent left out. */
  present(): Present[] {
    return [...this.#amounts.values()].filter(({ key }) => !SOLVENT.has(key));
  }

  keys(): SpeciesKey[] {
    return this.present().map(({ key }) => key);
  }

  /** mol of an equation that can run; `excess` when nothing limits it, zero when something is missing. */
  extentOf(equation: Equation): Amount {
    let least: Amount = 'excess';
    for (const { coefficient, formula } of equation.left) {
      const amount = this.amountOf(keyOf(formula));
      if (amount === 'excess') continue;
      const extent = amount.over(coefficient);
      if (least === 'excess' || extent.compare(least) < 0) least = extent;
    }
    return least;
  }

  /** Runs an equation: takes what it uses, adds what it makes. An excess stays an excess. */
  run(equation: Equation, extent: Rational): void {
    for (const { formula, net } of netAmounts(equation).values()) this.#change(formula, net.times(extent));
  }

  /** Runs an equation until something is used up; not at all when nothing limits it. */
  runAll(equation: Equation): void {
    const extent = this.extentOf(equation);
    if (extent !== 'excess') this.run(equation, extent);
  }

  remove(formula: Formula): void {
    this.#amounts.delete(keyOf(formula));
  }

  #change(formula: Formula, by: Rational): void {
    const key = keyOf(formula);
    if (by.isZero()) return;
    const before = this.net.get(key);
    this.net.set(key, { formula, net: before ? before.net.plus(by) : by });
    const amount = this.amountOf(key);
    if (amount === 'excess') return;
    const after = amount.plus(by);
    if (after.isZero()) this.#amounts.delete(key);
    else this.#set(this.#amounts.get(key)?.formula ?? formula, after);
  }

  #set(formula: Formula, amount: Amount): void {
    const key = keyOf(formula);
    if (amount !== 'excess' && amount.isZero()) this.#amounts.delete(key);
    else this.#amounts.set(key, { key, formula, amount });
  }
}
