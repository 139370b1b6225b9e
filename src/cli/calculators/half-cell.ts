import { elementsIn } from '../../chemistry/composition.ts';
import type { Couple } from '../../chemistry/couple.ts';
import { isMetal } from '../../chemistry/elements.ts';
import type { Formula, SpeciesKey, State } from '../../chemistry/formula.ts';
import { isElectron } from '../../chemistry/formula-parts.ts';
import { type HalfCellText, ownCouple, parseHalfCell } from '../../chemistry/parse-half-cell.ts';
import type { Species } from '../../chemistry/species.ts';
import { sameEquation } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { decimalAt } from '../../exact/decimal.ts';
import { Fault } from '../../exact/fault.ts';
import { didYouMean } from '../../potentials/did-you-mean.ts';

/** What a half-cell is looked up in. */
export interface HalfCells {
  readonly couples: readonly Couple[];
  /** all couples, when `couples` are only those that were asked for: for near matches */
  readonly all: () => readonly Couple[];
  /** species, for the states of a couple that the table does not hold; read only then */
  readonly species: () => ReadonlyMap<SpeciesKey, Species>;
}

/**
 * The couple of a half-cell as typed: `Cu^2+/Cu` of the table, `Ag^+/Ag=0.7996` with a potential of the user's own (in the table or not),
 * or a half-equation.
 * @throws Fault `unknown-couple` with near matches, `which-medium`, `wrong-way-round`, `no-potential`, or a fault of the text
 */
export function halfCellOf(text: string, table: HalfCells): Couple {
  const typed = parseHalfCell(text);
  const found = table.couples.filter((couple) => isMeant(couple, typed));
  if (found.length > 1) {
    const ids = found.map(({ id }) => `\`${id}\``).join(' or ');
    throw new Fault('which-medium', `\`${text}\` stands in two media: expected ${ids}`);
  }
  const { potential } = typed;
  if (found[0]) return potential ? { ...found[0], ...valued(potential), source: 'given by the user' } : found[0];
  if (potential === undefined) throw unknown(text, typed, table.all());
  return withStates(ownCouple(typed), table.species());
}

/** The two species that a half-cell names. @throws Fault of the text */
export function speciesNamed(text: string): [SpeciesKey, SpeciesKey] {
  const { oxidised, reduced } = parseHalfCell(text);
  return [keyOf(oxidised), keyOf(reduced)];
}

const valued = (stored: Couple['stored']) => ({ stored, printed: decimalAt(stored.value, 2) });

function isMeant(couple: Couple, { oxidised, reduced, half, medium }: HalfCellText): boolean {
  if (half) return sameEquation(couple.half, half);
  const isPair = couple.oxidisedKey === keyOf(oxidised) && couple.reducedKey === keyOf(reduced);
  return isPair && (medium === undefined || couple.medium === medium || couple.id === `${keyOf(oxidised)}/${keyOf(reduced)}`);
}

function unknown(text: string, { oxidised, reduced }: HalfCellText, couples: readonly Couple[]): Fault {
  const [up, down] = [keyOf(oxidised), keyOf(reduced)];
  const turned = couples.find((couple) => couple.oxidisedKey === down && couple.reducedKey === up);
  if (turned) {
    return new Fault(
      'wrong-way-round',
      `the oxidised form of a couple comes first: expected \`${turned.id}\`, found \`${text}\``,
    );
  }
  const near = didYouMean(
    `${up}/${down}`,
    couples.map(({ id }) => id),
  );
  const ask = near === '' ? `; to use a potential of your own, write it behind: \`${up}/${down}=0.50\`` : near;
  return new Fault('unknown-couple', `no couple \`${up}/${down}\` stands in the table${ask}`);
}

/** A couple whose species all have a state: the usual one of the species, or what its formula suggests. */
function withStates(couple: Couple, species: ReadonlyMap<SpeciesKey, Species>): Couple {
  const stated = (formula: Formula): Formula =>
    formula.state || isElectron(formula) ? formula : { ...formula, state: stateOf(formula, species) };
  const terms = (side: Couple['half']['left']) => side.map((term) => ({ ...term, formula: stated(term.formula) }));
  return {
    ...couple,
    oxidised: stated(couple.oxidised),
    reduced: stated(couple.reduced),
    half: { ...couple.half, left: terms(couple.half.left), right: terms(couple.half.right) },
  };
}

const GASES: ReadonlySet<string> = new Set(['H2', 'N2', 'O2', 'F2', 'Cl2']);

function stateOf(formula: Formula, species: ReadonlyMap<SpeciesKey, Species>): State {
  const key = keyOf(formula);
  const known = species.get(key)?.formula.state;
  if (known) return known;
  if (formula.charge !== 0) return 'aq';
  if (GASES.has(key)) return 'g';
  return elementsIn(formula).some(isMetal) ? 's' : 'aq';
}
