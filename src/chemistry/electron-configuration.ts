import { Fault } from '../exact/fault.ts';
import { centreOf } from './complex.ts';
import { elementOf } from './elements.ts';
import type { Formula } from './formula.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';
import { keyOf } from './write-formula.ts';

/** A subshell and its electrons: `3d`, 5. */
export interface Subshell {
  readonly n: number;
  readonly l: number;
  readonly electrons: number;
}

/** Electrons of an atom or a single ion in its ground state. */
export interface Configuration {
  readonly symbol: string;
  readonly charge: number;
  /** occupied subshells in order of n, then l */
  readonly subshells: readonly Subshell[];
  /** `[Ar] 3d3` */
  readonly text: string;
  /** `1s2 2s2 2p6 3s2 3p6 3d3` */
  readonly full: string;
  /** by Hund's rule, in the free atom or ion */
  readonly unpaired: number;
}

/** Subshells in the order in which they fill: by n + l, then by n (Madelung). */
const FILLING: readonly (readonly [n: number, l: number])[] = Array.from({ length: 8 }, (_, sum) => sum + 1).flatMap((sum) =>
  Array.from({ length: 8 }, (_, index) => [index + 1, sum - index - 1] as const).filter(([n, l]) => l >= 0 && l < n && l < 4),
);
const LETTERS = 'spdf';
const NOBLE: readonly (readonly [string, number])[] = [
  ['Og', 118],
  ['Rn', 86],
  ['Xe', 54],
  ['Kr', 36],
  ['Ar', 18],
  ['Ne', 10],
  ['He', 2],
];

/**
 * Atoms that do not follow the order of filling: what stands outside the noble-gas core (NIST Atomic Spectra Database; from
 * memory).
 */
const EXCEPTIONS: ReadonlyMap<string, string> = new Map(
  `Cr 3d5 4s1,Cu 3d10 4s1,Nb 4d4 5s1,Mo 4d5 5s1,Ru 4d7 5s1,Rh 4d8 5s1,Pd 4d10,Ag 4d10 5s1,La 5d1 6s2,Ce 4f1 5d1 6s2,Gd 4f7 5d1 6s2,
Pt 4f14 5d9 6s1,Au 4f14 5d10 6s1,Ac 6d1 7s2,Th 6d2 7s2,Pa 5f2 6d1 7s2,U 5f3 6d1 7s2,Np 5f4 6d1 7s2,Cm 5f7 6d1 7s2,Lr 5f14 7s2 7p1`
    .replaceAll('\n', '')
    .split(',')
    .map((entry) => [entry.split(' ', 1)[0]!, entry.slice(entry.indexOf(' ') + 1)] as const),
);

const sizeOf = (l: number) => 2 * (2 * l + 1);
const nameOf = (n: number, l: number) => `${n}${LETTERS[l]}`;

/** Electrons of a neutral atom by subshell name. */
function atomShells(symbol: string): Map<string, number> {
  const { number } = elementOf(symbol);
  const exception = EXCEPTIONS.get(symbol);
  if (!exception) return filled(number);
  const shells = filled(coreOf(number));
  for (const part of exception.split(' ')) shells.set(part.slice(0, 2), Number(part.slice(2)));
  return shells;
}

/** Electrons put in by the order of filling. */
function filled(electrons: number): Map<string, number> {
  const shells = new Map<string, number>();
  let left = electrons;
  for (const [n, l] of FILLING) {
    if (left === 0) break;
    const here = Math.min(left, sizeOf(l));
    shells.set(nameOf(n, l), here);
    left -= here;
  }
  return shells;
}

/** Electrons of the noble gas before an element. */
function coreOf(number: number): number {
  return NOBLE.find(([, electrons]) => electrons < number)?.[1] ?? 0;
}

/**
 * Takes electrons away, those of the highest n and then the highest l first (4s before 3d), from outside the core while it
 * lasts.
 */
function ionise(shells: Map<string, number>, charge: number, core: ReadonlyMap<string, number>): void {
  for (let taken = 0; taken < charge; taken += 1) {
    const names = [...shells.keys()].toSorted((one, other) => order(other) - order(one));
    const outer = names.find((name) => (core.get(name) ?? 0) < shells.get(name)!) ?? names[0]!;
    const left = shells.get(outer)! - 1;
    if (left === 0) shells.delete(outer);
    else shells.set(outer, left);
  }
}

/** Adds electrons to the first subshell that has room. */
function addElectrons(shells: Map<string, number>, count: number): void {
  for (let added = 0; added < count; added += 1) {
    const [n, l] = FILLING.find(([at, kind]) => (shells.get(nameOf(at, kind)) ?? 0) < sizeOf(kind))!;
    shells.set(nameOf(n, l), (shells.get(nameOf(n, l)) ?? 0) + 1);
  }
}

function order(name: string): number {
  return Number(name[0]) * 10 + LETTERS.indexOf(name[1]!);
}

/**
 * Ground-state configuration of an element or a single ion: chromium and copper by experiment, 4s lost before 3d.
 * @throws Fault `too-few-electrons` when the charge is more than the atom has
 */
export function configurationOf(symbol: string, charge = 0): Configuration {
  const { number } = elementOf(symbol);
  if (charge > number || charge < -8) {
    throw new Fault(
      'too-few-electrons',
      `${elementOf(symbol).name} has ${number} electrons: it cannot have the charge ${charge}`,
      {},
    );
  }
  const shells = atomShells(symbol);
  if (charge > 0) ionise(shells, charge, filled(coreOf(number)));
  else addElectrons(shells, -charge);
  const subshells = [...shells]
    .toSorted(([one], [other]) => order(one) - order(other))
    .map(([name, electrons]) => ({ n: Number(name[0]), l: LETTERS.indexOf(name[1]!), electrons }));
  const full = textOf(subshells) || '1s0';
  return { symbol, charge, subshells, text: shortText(subshells, charge === 0) || full, full, unpaired: unpairedIn(subshells) };
}

function textOf(subshells: readonly Subshell[]): string {
  return subshells.map(({ n, l, electrons }) => `${nameOf(n, l)}${electrons}`).join(' ');
}

/** With the largest noble gas that is wholly there in brackets; a noble gas itself is written with the one before it. */
function shortText(subshells: readonly Subshell[], neutral: boolean): string {
  const total = subshells.reduce((sum, { electrons }) => sum + electrons, 0);
  for (const [symbol, electrons] of NOBLE) {
    if (electrons > total || (neutral && electrons === total)) continue;
    const core = filled(electrons);
    const held = subshells.filter(({ n, l, electrons: here }) => core.get(nameOf(n, l)) === here);
    if (held.length !== core.size) continue;
    const rest = textOf(subshells.filter(({ n, l }) => !core.has(nameOf(n, l))));
    return rest === '' ? `[${symbol}]` : `[${symbol}] ${rest}`;
  }
  return '';
}

function unpairedIn(subshells: readonly Subshell[]): number {
  return subshells.reduce((sum, { l, electrons }) => sum + Math.min(electrons, sizeOf(l) - electrons), 0);
}

/**
 * Configuration of the atom or ion that a formula is, or of the central ion of a complex.
 * @throws Fault `not-an-atom` for anything else, or for a fractional oxidation number
 */
export function electronConfiguration(formula: Formula): Configuration {
  const [node, ...others] = formula.units.length === 1 ? formula.units[0]!.nodes : [];
  if (node?.kind === 'element' && node.count === 1 && others.length === 0) return configurationOf(node.symbol, formula.charge);
  const centre = centreOf(formula);
  const site = centre ? oxidationNumbers(formula).sites.find(({ element }) => element === centre) : undefined;
  if (!site?.number.isInteger()) {
    throw new Fault('not-an-atom', `expected an atom, a single ion or a complex, found \`${keyOf(formula)}\``, {});
  }
  return configurationOf(site.element, Number(site.number.n));
}
