import type { Rational } from '../exact/rational.ts';
import { elementOf, isMetal } from './elements.ts';
import { roman } from './roman.ts';

const SIMPLE = ['', '', 'di', 'tri', 'tetra', 'penta', 'hexa', 'hepta', 'octa', 'nona', 'deca', 'undeca', 'dodeca'];
const COMPOUND = ['', '', 'bis', 'tris', 'tetrakis', 'pentakis', 'hexakis'];
const HYDRATE = ['', 'mono', ...SIMPLE.slice(2)];

/** `di`, `tri` …; empty for one. Undefined beyond twelve. */
export function multiplier(count: number): string | undefined {
  return SIMPLE[count];
}

/** `bis`, `tris` …, before a name in brackets. Undefined beyond six. */
export function compoundMultiplier(count: number): string | undefined {
  return COMPOUND[count];
}

/** `pentahydrate`. Undefined beyond twelve. */
export function hydrateWord(count: number): string | undefined {
  return HYDRATE[count] === undefined ? undefined : `${HYDRATE[count]}hydrate`;
}

/** Names of the anions of single atoms. */
const IDES: ReadonlyMap<string, string> = new Map(
  `H hydride,F fluoride,Cl chloride,Br bromide,I iodide,O oxide,S sulfide,Se selenide,Te telluride,N nitride,P phosphide,As arsenide,C carbide,
Si silicide,B boride`
    .replaceAll('\n', '')
    .split(',')
    .map((entry) => entry.split(' ') as [string, string]),
);

/** Anions of several atoms of one element, by the oxidation number of each atom. */
const SHARED: ReadonlyMap<string, string> = new Map([
  ['O -1', 'peroxide'],
  ['O -1/2', 'superoxide'],
  ['N -1/3', 'azide'],
  ['I -1/3', 'triiodide'],
  ['S -1', 'disulfide'],
]);

/** `chloride`; `peroxide` when the oxidation number tells that atoms share a charge. Undefined when there is no such name. */
export function ideName(symbol: string, number: Rational): string | undefined {
  const shared = SHARED.get(`${symbol} ${number}`);
  if (shared) return shared;
  return number.isInteger() && number.sign() < 0 ? IDES.get(symbol) : undefined;
}

/** The name of an element as the second word of a molecule: `SO2`'s oxide. */
export function ideOf(symbol: string): string | undefined {
  return IDES.get(symbol);
}

/** Stems before -ate that differ from the element's name without its ending (IUPAC 2005, table IX and IR-9.2.2.2). */
const STEMS: ReadonlyMap<string, string> = new Map(
  `Fe ferr,Cu cupr,Ag argent,Au aur,Sn stann,Pb plumb,Hg mercur,Ni nickel,Co cobalt,Zn zinc,Mn mangan,W tungst,Mo molybd,Pt platin,Al alumin,S sulf,
P phosph,Sb antimon,C carbon,N nitr,As arsen,Bi bismuth,B bor,Si silic`
    .replaceAll('\n', '')
    .split(',')
    .map((entry) => entry.split(' ') as [string, string]),
);

/** The first word of an anion in -ate: `ferr`, `chrom`, `vanad`. */
export function ateStem(symbol: string): string {
  return STEMS.get(symbol) ?? elementOf(symbol).name.replace(/(ium|um|ine|on|ese|en)$/, '');
}

/** Metals whose compounds all have one oxidation number: it is left out of their names. */
const FIXED: ReadonlyMap<string, number> = new Map([
  ['Al', 3],
  ['Ga', 3],
  ['In', 3],
  ['Sc', 3],
  ['Y', 3],
  ['La', 3],
  ['Zn', 2],
  ['Cd', 2],
  ['Ag', 1],
]);

/** `iron(III)`, `sodium`: the name of an element as a cation. */
export function cationName(symbol: string, number: number): string {
  const { name, group } = elementOf(symbol);
  const usual = group === 1 || group === 2 ? group : FIXED.get(symbol);
  return usual === number ? name : `${name}(${roman(number)})`;
}

/** True when a name of this kind fits: metals and hydrogen are cations. */
export function isCationElement(symbol: string): boolean {
  return isMetal(symbol) || symbol === 'H';
}
