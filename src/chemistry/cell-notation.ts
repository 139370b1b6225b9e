import { elementsIn } from './composition.ts';
import type { Couple } from './couple.ts';
import { isMetal } from './elements.ts';
import type { Formula, SpeciesKey } from './formula.ts';
import { element, isElectron } from './formula-parts.ts';
import type { Species } from './species.ts';
import { keyOf, writeFormula } from './write-formula.ts';

/** Species of one phase, separated by commas. */
export type Phase = readonly Formula[];

/** One half-cell, from the electrode to the bridge. */
export interface HalfCell {
  readonly phases: readonly Phase[];
  /** true when platinum carries the current */
  readonly inert: boolean;
}

/** A conventional cell representation: left half-cell, salt bridge, right half-cell. */
export interface CellNotation {
  readonly left: HalfCell;
  readonly right: HalfCell;
  /** `Zn(s) | Zn^2+(aq) ‖ Cu^2+(aq) | Cu(s)` */
  readonly text: string;
  /** the same with the solution next to the bridge, where that is another order; as right as `text` */
  readonly alternatives: readonly string[];
}

export const PLATINUM: Formula = { units: [{ count: 1, nodes: [element('Pt')] }], charge: 0, state: 's' };
const BRIDGE = '‖';

/**
 * The conventional representation of a cell: phases by `|`, species of one phase by a comma, the salt bridge by `‖`, platinum
 * where no metal takes part; the more oxidised forms stand next to the bridge. H⁺ and OH⁻ that take part are shown, water is
 * not.
 * @param speciesOf gives the state and role of a species whose formula has no state
 * @see IUPAC Green Book, 3rd ed., 2.13
 */
export function cellNotation(negative: Couple, positive: Couple, speciesOf?: (key: SpeciesKey) => Species): CellNotation {
  const [left, right] = [halfCell(negative, false, speciesOf), halfCell(positive, false, speciesOf)];
  const text = notationText(left, right);
  const other = notationText(halfCell(negative, true, speciesOf), halfCell(positive, true, speciesOf));
  return { left, right, text, alternatives: other === text ? [] : [other] };
}

/** Text of two half-cells, the left one outwards in, the right one mirrored. */
export function notationText(left: HalfCell, right: HalfCell): string {
  const phases = (half: HalfCell) => half.phases.map((phase) => phase.map((formula) => writeFormula(formula)));
  const inwards = phases(left).map((phase) => phase.join(', '));
  const outwards = phases(right)
    .toReversed()
    .map((phase) => phase.toReversed().join(', '));
  return `${inwards.join(' | ')} ${BRIDGE} ${outwards.join(' | ')}`;
}

/** Phases from the electrode to the bridge; inside a phase the more reduced species first. */
function halfCell(couple: Couple, solutionNextToBridge: boolean, speciesOf?: (key: SpeciesKey) => Species): HalfCell {
  const species = (formulas: readonly Formula[]) => formulas.filter(takesPart).map((formula) => stated(formula, speciesOf));
  const oxidised = species(couple.half.left.map((term) => term.formula));
  const reduced = species(couple.half.right.map((term) => term.formula));
  const metal = [...reduced, ...oxidised].find(isConductor);
  const all = [...reduced.toReversed(), ...oxidised.toReversed()].filter((formula) => formula !== metal);
  const solution = all.filter((formula) => formula.state === 'aq');
  const others = all.filter((formula) => formula.state !== 'aq').map((formula) => [formula]);
  const electrode: Phase = [metal ?? PLATINUM];
  // A solid on its own metal (AgCl on Ag) lies between metal and solution, and so do two solids on platinum (PbO2 and PbSO4); else the
  // phase of the oxidised form comes next to the bridge, if that form is shown: water is not.
  const stateOf = (formulas: readonly Formula[], key: SpeciesKey) => formulas.find((formula) => keyOf(formula) === key)?.state;
  const [up, down] = [stateOf(oxidised, couple.oxidisedKey), stateOf(reduced, couple.reducedKey)];
  const onElectrode = metal !== undefined || up === undefined || up === 'aq' || (up === 's' && down === 's');
  const last = solution.length > 0 ? [solution] : [];
  const phases = solutionNextToBridge || onElectrode ? [...others, ...last] : [...last, ...others];
  return { phases: [electrode, ...phases], inert: metal === undefined };
}

function takesPart(formula: Formula): boolean {
  return !isElectron(formula) && keyOf(formula) !== 'H2O';
}

function stated(formula: Formula, speciesOf?: (key: SpeciesKey) => Species): Formula {
  if (formula.state) return formula;
  const state = speciesOf?.(keyOf(formula)).formula.state ?? (formula.charge === 0 ? 's' : 'aq');
  return { ...formula, state };
}

/** A metal as an element, solid or liquid. */
function isConductor(formula: Formula): boolean {
  const elements = elementsIn(formula);
  return (
    formula.charge === 0 && elements.length === 1 && isMetal(elements[0]!) && formula.state !== 'aq' && formula.state !== 'g'
  );
}
