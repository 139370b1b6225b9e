import { oxidationNumber } from './oxidation-number.ts';
import { speciesOf } from './sides.ts';

/** Names of elements, and the stems of their oxoanions where these differ. IUPAC names. */
export const ELEMENTS: Readonly<Record<string, string>> = {
  H: 'hydrogen',
  Li: 'lithium',
  B: 'boron',
  C: 'carbon',
  N: 'nitrogen',
  O: 'oxygen',
  F: 'fluorine',
  Na: 'sodium',
  Mg: 'magnesium',
  Al: 'aluminium',
  Si: 'silicon',
  P: 'phosphorus',
  S: 'sulfur',
  Cl: 'chlorine',
  K: 'potassium',
  Ca: 'calcium',
  Sc: 'scandium',
  Ti: 'titanium',
  V: 'vanadium',
  Cr: 'chromium',
  Mn: 'manganese',
  Fe: 'iron',
  Co: 'cobalt',
  Ni: 'nickel',
  Cu: 'copper',
  Zn: 'zinc',
  Br: 'bromine',
  Sr: 'strontium',
  Mo: 'molybdenum',
  Ag: 'silver',
  Cd: 'cadmium',
  Sn: 'tin',
  I: 'iodine',
  Ba: 'barium',
  Ce: 'cerium',
  W: 'tungsten',
  Pt: 'platinum',
  Au: 'gold',
  Hg: 'mercury',
  Pb: 'lead',
};

/** Species whose names follow no rule that is written here. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  H2O2: ['hydrogen peroxide'],
  'HO2^-': ['hydrogenperoxide'],
  SO2: ['sulfur dioxide'],
  CO2: ['carbon dioxide'],
  H2O: ['water'],
  NH3: ['ammonia'],
  'I^-': ['iodide'],
  'Br^-': ['bromide'],
  'Cl^-': ['chloride'],
  'F^-': ['fluoride'],
  'S2O3^2-': ['thiosulfate'],
  'S4O6^2-': ['tetrathionate'],
  'SO4^2-': ['sulfate'],
  'SO3^2-': ['sulfite'],
  'S2O8^2-': ['peroxodisulfate'],
  'C2O4^2-': ['ethanedioate', 'oxalate'],
  H2C2O4: ['ethanedioic acid', 'oxalic acid'],
  'MnO4^-': ['manganate(VII)'],
  'MnO4^2-': ['manganate(VI)'],
  'Cr2O7^2-': ['dichromate(VI)', 'dichromate'],
  'CrO4^2-': ['chromate(VI)', 'chromate'],
  'VO2^+': ['dioxidovanadium(V)', 'dioxovanadium(V)'],
  'VO^2+': ['oxidovanadium(IV)', 'oxovanadium(IV)'],
  'TiO^2+': ['oxidotitanium(IV)', 'oxotitanium(IV)'],
  'ClO^-': ['chlorate(I)'],
  HOCl: ['chloric(I) acid'],
  'ClO3^-': ['chlorate(V)'],
  'BrO3^-': ['bromate(V)', 'bromate'],
  'IO3^-': ['iodate(V)', 'iodate'],
  H2S: ['hydrogen sulfide'],
  MnO2: ['manganese(IV) oxide'],
  PbO2: ['lead(IV) oxide'],
  CuI: ['copper(I) iodide'],
  NO: ['nitrogen monoxide'],
  NO2: ['nitrogen dioxide'],
  'NO3^-': ['nitrate'],
  'NH4^+': ['ammonium'],
  PbSO4: ['lead(II) sulfate'],
  CH3OH: ['methanol'],
  C2H5OH: ['ethanol'],
};

const ROMAN = ['0', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII'];

/** Metals with one usual ion are named without a number. */
const ONE_ION = new Set(['H', 'Li', 'Na', 'K', 'Mg', 'Ca', 'Sr', 'Ba', 'Al', 'Zn', 'Ag', 'Cd', 'Ni', 'Co']);

/** Names a species goes by in prose, without the word ion. */
export function namesOf(key: string): readonly string[] {
  const listed = NAMES[key];
  if (listed) return listed;
  const { atoms, charge } = speciesOf(key);
  const complex = complexName(key);
  if (complex) return complex;
  const [element] = [...atoms.keys()];
  const name = atoms.size === 1 && element ? ELEMENTS[element] : undefined;
  if (!name) return [];
  if (charge === 0) return [name];
  const number = oxidationNumber(key, element!);
  const numbered = number?.isWhole() ? [`${name}(${ROMAN[Math.abs(Number(number.above))]})`] : [];
  return ONE_ION.has(element!) ? [...numbered, name] : numbered;
}

const LIGANDS: Readonly<Record<string, string>> = {
  CN: 'cyanido',
  NH3: 'ammine',
  H2O: 'aqua',
  OH: 'hydroxido',
  Cl: 'chlorido',
  C2O4: 'ethanedioato',
  NH2CH2CH2NH2: '(ethane-1,2-diamine)',
};
const COUNTS = ['', '', 'di', 'tri', 'tetra', 'penta', 'hexa'];
const LATIN: Readonly<Record<string, string>> = { Fe: 'ferr', Cu: 'cupr', Ag: 'argent', Au: 'aur', Pb: 'plumb', Sn: 'stann' };

const COMPLEX = /^(\[?)([A-Z][a-z]?)\(?(CN|NH3|H2O|OH|Cl|C2O4|NH2CH2CH2NH2)\)?(\d*)\]?(?:\^.*)?$/;

/** Complexes of one ligand, and hydroxides. */
function complexName(key: string): readonly string[] | undefined {
  const [, open, metal = '', ligand = '', digits = ''] = COMPLEX.exec(key) ?? [];
  const name = ELEMENTS[metal];
  const number = oxidationNumber(key, metal);
  if (!name || !number?.isWhole()) return undefined;
  const roman = ROMAN[Number(number.above)];
  if (open === '') {
    const plain = ONE_ION.has(metal) ? [`${name} hydroxide`] : [];
    return ligand === 'OH' && digits !== '' ? [`${name}(${roman}) hydroxide`, ...plain] : undefined;
  }
  const prefix = ligand.length > 3 ? ['', '', 'bis', 'tris'][Number(digits || '1')] : COUNTS[Number(digits || '1')];
  return [`${prefix}${LIGANDS[ligand]}${speciesOf(key).charge < 0 ? anionOf(metal, name) : name}(${roman})`];
}

/** A metal in a complex of negative charge: ferrate, aluminate, chromate, zincate. */
function anionOf(metal: string, name: string): string {
  const stem = LATIN[metal] ?? name.replace(/(?:ium|ese|um|el|en)$/, (end) => (end === 'ese' ? 'an' : ''));
  return `${metal === 'Ni' ? 'nickel' : stem}ate`;
}

/** True when a name of the species stands in the text, and not as a part of another (`tin` in `tin(II) ions`, `hydrogen` in its peroxide). */
export function isNamedIn(key: string, text: string): boolean {
  return namesOf(key).some((name) => {
    const longer = Object.values(NAMES).flatMap((names) => names.filter((other) => other !== name && other.includes(name)));
    const rest = longer.reduce((left, other) => left.replaceAll(other, ''), text);
    const plain = name.replaceAll(/[()]/g, '\\$&');
    const ion = speciesOf(key).charge === 0 ? '(?!\\(|[a-z]| ions?\\b)' : '(?:\\b|(?<=\\))) ions?\\b';
    return new RegExp(`(?<![a-z])${plain}${ion}`, 'i').test(rest);
  });
}

/** True when a text names the species, with or without the word ion, and nothing else. */
export function isNameOf(text: string, key: string): boolean {
  return namesOf(key).some(
    (name) =>
      text
        .replace(/ ions?$/, '')
        .trim()
        .toLowerCase() === name.toLowerCase(),
  );
}
