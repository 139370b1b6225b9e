import { Fraction } from '../exact/fraction.ts';
import { speciesOf } from './sides.ts';

/** Group 1 and 2 metals, aluminium, fluorine: one oxidation number in all their compounds (IUPAC Gold Book, rules of oxidation number). */
const FIXED: Readonly<Record<string, number>> = {
  F: -1,
  Li: 1,
  Na: 1,
  K: 1,
  Rb: 1,
  Cs: 1,
  Be: 2,
  Mg: 2,
  Ca: 2,
  Sr: 2,
  Ba: 2,
  Al: 3,
  Zn: 2,
};

/** Charges of ions and ligands that stand in a formula as a whole. */
const GROUPS: Readonly<Record<string, number>> = {
  OH: -1,
  CN: -1,
  NH3: 0,
  H2O: 0,
  CO: 0,
  NH2CH2CH2NH2: 0,
  en: 0,
  C2O4: -2,
  ox: -2,
  SO4: -2,
  NO3: -1,
  NH4: 1,
  S2O3: -2,
  SCN: -1,
  NCS: -1,
  NO2: -1,
  CO3: -2,
  PO4: -3,
  C10H12N2O8: -4,
  edta: -4,
  Cl: -1,
  Br: -1,
  I: -1,
  F: -1,
};

/** Peroxides: two oxygens hold to one another, so each counts −1 in them. */
const PEROXIDE: Readonly<Record<string, number>> = { H2O2: 2, 'HO2^-': 2, Na2O2: 2, BaO2: 2, 'O2^2-': 2, 'S2O8^2-': 2, CrO5: 4 };
const SUPEROXIDE = new Set(['KO2', 'O2^-']);
const HYDRIDES = new Set(['NaH', 'CaH2', 'LiH', 'KH', 'MgH2', 'NaBH4', 'LiAlH4']);

/**
 * Oxidation number of an element in a species: what is left of the charge when all others have theirs, shared between its atoms.
 * An average where the atoms are unlike.
 * @returns undefined when two elements are open
 */
export function oxidationNumber(key: string, element: string): Fraction | undefined {
  const { atoms, charge } = speciesOf(key);
  const own = atoms.get(element);
  if (own === undefined) return undefined;
  if (atoms.size === 1) return Fraction.of(charge, own);
  const complex = inComplex(key, element);
  if (complex) return complex;
  if (element === 'O' && !atoms.has('F') && !SUPEROXIDE.has(key)) return oxygenIn(key, own);
  let rest = Fraction.of(charge);
  for (const [other, amount] of atoms) {
    if (other === element) continue;
    const number = usualNumber(key, other, element, atoms);
    if (number === undefined) return undefined;
    rest = rest.subtract(number.multiply(Fraction.of(amount)));
  }
  return rest.divide(Fraction.of(own));
}

function oxygenIn(key: string, atoms: number): Fraction {
  const single = PEROXIDE[key] ?? 0;
  return Fraction.of(-2 * (atoms - single) - single, atoms);
}

/** What an element counts beside the one that is asked for. */
function usualNumber(key: string, element: string, asked: string, atoms: ReadonlyMap<string, number>): Fraction | undefined {
  if (element === 'O') {
    if (SUPEROXIDE.has(key)) return Fraction.of(-1, 2);
    return atoms.has('F') && asked !== 'F' ? Fraction.of(2) : oxygenIn(key, atoms.get('O')!);
  }
  if (element === 'H') return Fraction.of(HYDRIDES.has(key) ? -1 : 1);
  const fixed = FIXED[element];
  if (fixed !== undefined) return Fraction.of(fixed);
  const halogen = ['Cl', 'Br', 'I'].includes(element) && !atoms.has('O');
  if (halogen) return Fraction.of(-1);
  if (element === 'S' && !atoms.has('O')) return Fraction.of(-2);
  return element === 'N' && !atoms.has('O') ? Fraction.of(-3) : undefined;
}

/** The metal of a complex or a salt of known ions: charge minus that of every group in brackets. */
function inComplex(key: string, element: string): Fraction | undefined {
  const [, inner, metal, groups] = /^(\[?)([A-Z][a-z]?)((?:\([A-Za-z0-9]+\)\d*|Cl\d*|Br\d*|I\d*)+)\]?(?:\^.*)?$/.exec(key) ?? [];
  if (metal !== element || groups === undefined || (inner === '' && !groups.includes('('))) return undefined;
  let rest = speciesOf(key).charge;
  for (const [, bracketed, bare, digits] of groups.matchAll(/(?:\(([A-Za-z0-9]+)\)|(Cl|Br|I))(\d*)/g)) {
    const charge = GROUPS[(bracketed ?? bare)!];
    if (charge === undefined) return undefined;
    rest -= charge * Number(digits || '1');
  }
  return Fraction.of(rest);
}
