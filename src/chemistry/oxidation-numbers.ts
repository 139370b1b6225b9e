import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { atomsInNodes, atomsOf, elementsIn } from './composition.ts';
import { elementOf } from './elements.ts';
import type { Formula, FormulaNode } from './formula.ts';
import { isElectron } from './formula-parts.ts';
import { knownIon } from './ions.ts';
import { averageNote, specialSites } from './oxidation-data.ts';
import { counterIons, ofComplexes } from './oxidation-in-complexes.ts';
import { applyRules, chargeText, oxidationText } from './oxidation-rules.ts';
import { joinParts, type OxidationNumbers, sitesInOrder, sumOfSites, timesPart } from './oxidation-sites.ts';
import { type Piece, splitIons } from './split-ions.ts';
import { keyOf, writeFormula, writeNodes } from './write-formula.ts';

const NOTHING: OxidationNumbers = { sites: [], rules: [] };
const KNOWN = new WeakMap<Formula, OxidationNumbers>();

/**
 * Oxidation numbers by the rules in order: elements, single ions, ions of a salt one by one, ligands, then fluorine, groups 1
 * and 2, aluminium, hydrogen, oxygen …, the last element by difference. Averages are exact fractions.
 * @throws Fault `undecided` when the rules do not decide (`CuFeS2`), or for the electron
 */
export function oxidationNumbers(formula: Formula): OxidationNumbers {
  let found = KNOWN.get(formula);
  if (!found) {
    if (isElectron(formula)) throw new Fault('undecided', 'an electron has no oxidation number', {});
    found = sitesInOrder(ofFormula(formula), elementsIn(formula));
    KNOWN.set(formula, found);
  }
  return found;
}

/** The number of an element, averaged over its atoms; undefined when the species does not hold it. */
export function averageOxidationNumber(formula: Formula, symbol: string): Rational | undefined {
  const sites = oxidationNumbers(formula).sites.filter((site) => site.element === symbol);
  if (sites.length === 0) return undefined;
  return sumOfSites(sites).over(Rational.of(atomsOf(formula, symbol)));
}

function ofFormula(formula: Formula): OxidationNumbers {
  const special = specialSites(keyOf(formula));
  if (special) return { sites: special.sites, rules: [special.rule] };
  if (formula.units.length > 1) return ofUnits(formula);
  const nodes = formula.units[0]!.nodes;
  const note = averageNote(keyOf(formula));
  const found = ofNodes(nodes, formula.charge, formula);
  return note ? { ...found, rules: [...found.rules, note] } : found;
}

/** A hydrate or double salt: each part between the dots is neutral by itself. */
function ofUnits(formula: Formula): OxidationNumbers {
  if (formula.charge !== 0) throw undecided(formula, 'a charge over parts joined by dots');
  const parts = formula.units.map(({ count, nodes }) => timesPart(ofFormula({ units: [{ count: 1, nodes }], charge: 0 }), count));
  return joinParts(parts);
}

function undecided(formula: Formula, because: string): Fault {
  const text = writeFormula(formula);
  return new Fault('undecided', `the oxidation numbers of \`${text}\` cannot be decided: ${because}`, {
    text,
    at: 0,
    length: text.length,
  });
}

/** First by the strong rules with little taken apart, then ion by ion, then by the weak rules alone. */
function ofNodes(nodes: readonly FormulaNode[], charge: number, whole: Formula): OxidationNumbers {
  const first = ofPieces(splitIons(nodes, false), charge, false);
  if (typeof first !== 'string') return first;
  // An ion is not taken apart into itself, nor thiocyanate into sulfur and cyanide.
  if (knownIon(writeNodes(nodes))?.charge !== charge) {
    const second = ofPieces(splitIons(nodes, true), charge, true);
    if (typeof second !== 'string') return second;
  }
  const third = ofPieces(splitIons(nodes, false), charge, true);
  if (typeof third !== 'string') return third;
  throw undecided(whole, third);
}

/** The numbers of pieces that bear a charge together, or why they are not decided. */
function ofPieces(pieces: readonly Piece[], charge: number, weak: boolean): OxidationNumbers | string {
  const rest = pieces.find((piece) => piece.kind === 'rest');
  const known = pieces.filter((piece) => piece.kind === 'known');
  const complexes = pieces.filter((piece) => piece.kind === 'complex');
  const left = charge - known.reduce((sum, { formula, count }) => sum + formula.charge * count, 0);
  const parts = known.map(({ formula, count }) => timesPart(ofFormula(formula), count));
  if (complexes.length > 0) {
    const outside = rest ? counterIons(rest.nodes) : { charge: 0, numbers: NOTHING };
    if (typeof outside === 'string') return outside;
    const inside = ofComplexes(complexes, left - outside.charge, ofFormula);
    return typeof inside === 'string' ? inside : joinParts([outside.numbers, ...parts, inside]);
  }
  if (!rest) return left === 0 ? joinParts(parts) : 'the charges of its ions do not add up';
  const ions = known.length > 0 ? known.map(({ formula }) => `\`${keyOf(formula)}\` has its usual charge`) : [];
  const ruled = ofRest(rest.nodes, left, weak);
  return typeof ruled === 'string' ? ruled : joinParts([{ sites: [], rules: ions }, ...parts, ruled]);
}

/** Atoms in no known ion. */
function ofRest(nodes: readonly FormulaNode[], charge: number, weak: boolean): OxidationNumbers | string {
  const atoms = atomsInNodes(nodes);
  const [only] = [...atoms.keys()];
  if (atoms.size === 1 && charge === 0) {
    return {
      sites: [{ element: only!, number: Rational.zero, atoms: atoms.get(only!)! }],
      rules: ['an element uncombined is 0'],
    };
  }
  const ruling = applyRules(atoms, charge, weak);
  if (ruling.kind === 'open') return ruling.because;
  const single = atoms.size === 1 && charge !== 0 ? [singleRule(only!, atoms.get(only!)!, charge)] : [];
  const sites = [...atoms].map(([element, count]) => ({ element, number: ruling.numbers.get(element)!, atoms: count }));
  return { sites, rules: [...single, ...ruling.rules] };
}

function singleRule(symbol: string, atoms: number, charge: number): string {
  const number = Rational.of(charge, atoms);
  if (atoms === 1) return `an ion of one atom has its charge as its number, ${oxidationText(number)}`;
  return `the charge, ${chargeText(charge)}, is shared by ${atoms} atoms of ${elementOf(symbol).name}: ${oxidationText(number)} each`;
}
