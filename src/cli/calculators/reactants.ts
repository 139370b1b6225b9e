import type { Couple } from '../../chemistry/couple.ts';
import type { Formula, SpeciesKey } from '../../chemistry/formula.ts';
import type { Amount, Reactant } from '../../chemistry/mixture.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import type { Salt, Species } from '../../chemistry/species.ts';
import { keyOf, writeNodes } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';
import { Rational } from '../../exact/rational.ts';
import { didYouMean } from '../../potentials/did-you-mean.ts';

/** What reactants are looked up in. */
export interface Shelf {
  readonly couples: readonly Couple[];
  readonly species: ReadonlyMap<SpeciesKey, Species>;
  /** read when something is no species */
  readonly salts: () => readonly Salt[];
}

/** Something put into the beaker as it was typed, and the species it brings. */
export interface Ingredient {
  /** its formula as a key, which `--amount` and `--excess` name it by */
  readonly key: SpeciesKey;
  /** mol, or in excess */
  readonly amount: Amount;
  readonly reactants: readonly Reactant[];
}

const SOLVENT: ReadonlySet<SpeciesKey> = new Set(['H^+', 'OH^-', 'H2O']);

/**
 * A species, or a bottled substance as its ions: `Fe^2+`, `FeSO4·7H2O`, `FeSO4`.
 * @param amounts mol by key; 1 when it is not there, in excess for H⁺ and OH⁻
 * @throws Fault `unknown-species`, or a fault of the text
 */
export function ingredientOf(
  text: string,
  shelf: Shelf,
  amounts: ReadonlyMap<SpeciesKey, Rational>,
  excess: ReadonlySet<SpeciesKey>,
): Ingredient {
  const formula = parseFormula(text);
  const key = keyOf(formula);
  const amount = excess.has(key) ? 'excess' : (amounts.get(key) ?? (SOLVENT.has(key) ? 'excess' : Rational.one));
  const salt = knownSpecies(key, shelf) ? undefined : saltOf(formula, shelf.salts());
  if (salt) return { key, amount, reactants: ionsOf(salt, amount, shelf) };
  if (!knownSpecies(key, shelf)) throw unknown(key, shelf);
  return { key, amount, reactants: [{ formula: formulaOf(key, shelf), amount }] };
}

function unknown(key: SpeciesKey, { species, salts }: Shelf): Fault {
  const names = [...species.keys(), ...salts().map(({ formula }) => keyOf(formula))];
  const near = didYouMean(key, names);
  const ask = near === '' ? '; give a species of a couple in the table, such as `Fe^2+`' : near;
  return new Fault('unknown-species', `nothing is known of \`${key}\`${ask}`);
}

function knownSpecies(key: SpeciesKey, { species, couples }: Shelf): boolean {
  return species.has(key) || termsOf(couples).some(({ formula }) => keyOf(formula) === key);
}

function termsOf(couples: readonly Couple[]) {
  return couples.flatMap(({ half }) => [...half.left, ...half.right]);
}

/** With the state in which the species is met. */
function formulaOf(key: SpeciesKey, { species, couples }: Shelf): Formula {
  return species.get(key)?.formula ?? termsOf(couples).find(({ formula }) => keyOf(formula) === key)!.formula;
}

/** The bottled substance of this formula, whatever water of crystallisation it was typed with. */
function saltOf(formula: Formula, salts: readonly Salt[]): Salt | undefined {
  const key = keyOf(formula);
  return (
    salts.find((salt) => keyOf(salt.formula) === key) ?? salts.find((salt) => anhydrous(salt.formula) === anhydrous(formula))
  );
}

function anhydrous({ units, charge }: Formula): string {
  return `${writeNodes(units[0]?.nodes ?? [])} ${charge}`;
}

function ionsOf(salt: Salt, amount: Amount, shelf: Shelf): Reactant[] {
  const times = (count: number): Amount => (amount === 'excess' ? 'excess' : amount.times(Rational.of(count)));
  const ion = (key: SpeciesKey, count: number, counterIon: boolean): Reactant => ({
    formula: formulaOf(key, shelf),
    amount: times(count),
    ...(counterIon ? { counterIon } : {}),
  });
  return [ion(salt.gives, salt.count, false), ...salt.with.map(({ key, count }) => ion(key, count, true))];
}
