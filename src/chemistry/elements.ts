import { Fault } from '../exact/fault.ts';

/** A chemical element. */
export interface Element {
  readonly symbol: string;
  /** atomic number */
  readonly number: number;
  readonly name: string;
  /** group of the IUPAC periodic table, 1–18; absent for the f block (La–Yb, Ac–No) */
  readonly group?: number;
  readonly period: number;
}

/** Symbols and names in order of atomic number (IUPAC periodic table of the elements, 4 May 2022). */
const NAMES = `
H hydrogen,He helium,Li lithium,Be beryllium,B boron,C carbon,N nitrogen,O oxygen,F fluorine,Ne neon,Na sodium,Mg magnesium,
Al aluminium,Si silicon,P phosphorus,S sulfur,Cl chlorine,Ar argon,K potassium,Ca calcium,Sc scandium,Ti titanium,V vanadium,
Cr chromium,Mn manganese,Fe iron,Co cobalt,Ni nickel,Cu copper,Zn zinc,Ga gallium,Ge germanium,As arsenic,Se selenium,Br bromine,
Kr krypton,Rb rubidium,Sr strontium,Y yttrium,Zr zirconium,Nb niobium,Mo molybdenum,Tc technetium,Ru ruthenium,Rh rhodium,
Pd palladium,Ag silver,Cd cadmium,In indium,Sn tin,Sb antimony,Te tellurium,I iodine,Xe xenon,Cs caesium,Ba barium,La lanthanum,
Ce cerium,Pr praseodymium,Nd neodymium,Pm promethium,Sm samarium,Eu europium,Gd gadolinium,Tb terbium,Dy dysprosium,Ho holmium,
Er erbium,Tm thulium,Yb ytterbium,Lu lutetium,Hf hafnium,Ta tantalum,W tungsten,Re rhenium,Os osmium,Ir iridium,Pt platinum,
Au gold,Hg mercury,Tl thallium,Pb lead,Bi bismuth,Po polonium,At astatine,Rn radon,Fr francium,Ra radium,Ac actinium,Th thorium,
Pa protactinium,U uranium,Np neptunium,Pu plutonium,Am americium,Cm curium,Bk berkelium,Cf californium,Es einsteinium,Fm fermium,
Md mendelevium,No nobelium,Lr lawrencium,Rf rutherfordium,Db dubnium,Sg seaborgium,Bh bohrium,Hs hassium,Mt meitnerium,
Ds darmstadtium,Rg roentgenium,Cn copernicium,Nh nihonium,Fl flerovium,Mc moscovium,Lv livermorium,Ts tennessine,Og oganesson`;

/** Atomic numbers at which the periods end: the noble gases. */
const PERIOD_ENDS = [2, 10, 18, 36, 54, 86, 118] as const;

/**
 * Group of an element. Periods 6 and 7 hold fourteen f-block elements between groups 2 and 3; group 3 is Sc, Y, Lu, Lr
 * (provisional IUPAC report, Pure Appl. Chem. 2021, 93, 429).
 */
function groupOf(number: number, period: number): number | undefined {
  const end = PERIOD_ENDS[period - 1]!;
  const place = number - (period > 1 ? PERIOD_ENDS[period - 2]! : 0);
  if (period === 1) return number === 1 ? 1 : 18;
  if (place <= 2) return place;
  const fromEnd = end - number;
  const group = 18 - fromEnd;
  const first = period <= 3 ? 13 : 3;
  return group >= first ? group : undefined;
}

const ELEMENTS: readonly Element[] = NAMES.replaceAll('\n', '')
  .split(',')
  .map((entry, index) => {
    const [symbol, name] = entry.split(' ') as [string, string];
    const number = index + 1;
    const period = PERIOD_ENDS.findIndex((end) => number <= end) + 1;
    const group = groupOf(number, period);
    return group === undefined ? { symbol, number, name, period } : { symbol, number, name, group, period };
  });

const BY_SYMBOL: ReadonlyMap<string, Element> = new Map(ELEMENTS.map((element) => [element.symbol, element]));

/** True for a symbol of the periodic table, such as `Fe`. */
export function isElement(symbol: string): boolean {
  return BY_SYMBOL.has(symbol);
}

/** @throws Fault `unknown-element` */
export function elementOf(symbol: string): Element {
  const element = BY_SYMBOL.get(symbol);
  if (!element)
    throw new Fault('unknown-element', `no element has the symbol \`${symbol}\``, { text: symbol, at: 0, length: symbol.length });
  return element;
}

/** All elements in order of atomic number. */
export function allElements(): readonly Element[] {
  return ELEMENTS;
}

/** Non-metals and the metalloids that are named and counted as non-metals in this subject. */
const NON_METALS = new Set('H He B C N O F Ne Si P S Cl Ar Ge As Se Br Kr Te I Xe At Rn'.split(' '));

/** True for a metal. */
export function isMetal(symbol: string): boolean {
  return isElement(symbol) && !NON_METALS.has(symbol);
}
