import { Fault } from '../exact/fault.ts';
import type { Rational } from '../exact/rational.ts';
import { type Complex, complexNodes, describe, type Shape } from './complex.ts';
import { atomsOf, elementsIn } from './composition.ts';
import { elementOf, isMetal } from './elements.ts';
import type { Formula, FormulaNode } from './formula.ts';
import { knownIon } from './ions.ts';
import { ionsOf, type SaltIon } from './ions-of.ts';
import { complexName } from './name-complex.ts';
import { ownName } from './named-species.ts';
import { ateStem, cationName, hydrateWord, ideName, ideOf, isCationElement, multiplier } from './naming-words.ts';
import { averageOxidationNumber } from './oxidation-numbers.ts';
import { roman } from './roman.ts';
import { keyOf, writeNodes } from './write-formula.ts';

/** What a species is called, and what its complex, when it has one, is like. */
export interface SpeciesName {
  /** IUPAC 2005, with the forms usual in this subject */
  readonly name: string;
  /** another name in use, when there is one */
  readonly tradeName?: string;
  readonly oxidationNumber?: Rational;
  readonly coordinationNumber?: number;
  readonly shape?: Shape;
}

type Pair = readonly [name: string, tradeName: string];

/**
 * Names an element, an ion, a salt with its water, a complex, or a simple molecule.
 * @throws Fault `no-name` when it follows no pattern known here; `undecided` when oxidation numbers cannot be decided
 */
export function nameOf(formula: Formula): SpeciesName {
  const [name, trade] = wholeName(formula);
  const [nodes] = complexNodes(formula);
  const base = trade === name ? { name } : { name, tradeName: trade };
  if (!nodes) return base;
  const { oxidationNumber, coordinationNumber, shape } = describe(nodes, formula);
  return shape ? { ...base, oxidationNumber, coordinationNumber, shape } : { ...base, oxidationNumber, coordinationNumber };
}

function wholeName(formula: Formula): Pair {
  const own = ownName(keyOf(formula));
  if (own) return [own[0], own[1] ?? own[0]];
  if (formula.units.length > 1) return unitsName(formula);
  const { nodes } = formula.units[0]!;
  const found = formula.charge === 0 ? neutralName(nodes, formula) : ionName(nodes, formula);
  if (!found) throw new Fault('no-name', `no name is known for \`${keyOf(formula)}\``, {});
  return found;
}

const both = (name: string): Pair => [name, name];
const each = ([name, trade]: Pair, change: (text: string) => string): Pair => [change(name), change(trade)];

/** A hydrate, or parts joined by dots with their numbers. */
function unitsName(formula: Formula): Pair {
  const parts = formula.units.map(({ nodes, count }) => ({ count, formula: { units: [{ count: 1, nodes }], charge: 0 } }));
  const [first, second, ...more] = parts as [(typeof parts)[0], (typeof parts)[0], ...typeof parts];
  const hydrate = keyOf(second.formula) === 'H2O' && more.length === 0 ? hydrateWord(second.count) : undefined;
  if (hydrate) return each(wholeName(first.formula), (name) => `${name} ${hydrate}`);
  const names = parts.map((part) => wholeName(part.formula));
  const ratio = `(${parts.map((part) => part.count).join('/')})`;
  return [`${names.map(([name]) => name).join('–')} ${ratio}`, `${names.map(([, trade]) => trade).join('–')} ${ratio}`];
}

function ionName(nodes: readonly FormulaNode[], formula: Formula): Pair | undefined {
  const withIon = (pair: Pair | undefined) => pair && each(pair, (name) => `${name} ion`);
  const [complex] = complexNodes(formula);
  if (complex) return withIon(complexPair(describe(complex, formula)));
  const known = knownIon(writeNodes(nodes));
  if (known?.charge === formula.charge) return withIon([known.name, known.tradeName ?? known.name]);
  const elements = elementsIn(formula);
  const [symbol] = elements;
  if (elements.length === 1) return withIon(singleName(symbol!, atomsOf(formula, symbol!), formula));
  return withIon(oxoanionName(formula));
}

function complexPair(complex: Complex): Pair {
  return [complexName(complex), complexName(complex, true)];
}

/** An ion of one element: `iron(III)`, `chloride`, `peroxide`. */
function singleName(symbol: string, atoms: number, formula: Formula): Pair | undefined {
  const number = averageOxidationNumber(formula, symbol)!;
  if (formula.charge > 0) return atoms === 1 && isMetal(symbol) ? both(cationName(symbol, formula.charge)) : undefined;
  const name = ideName(symbol, number);
  return name === undefined ? undefined : both(name);
}

/** An anion of one element with oxygen: `ferrate(VI)`, `divanadate(V)`. */
function oxoanionName(formula: Formula): Pair | undefined {
  const [symbol, oxygen, ...more] = elementsIn(formula);
  if (formula.charge > 0 || oxygen !== 'O' || more.length > 0) return undefined;
  const number = averageOxidationNumber(formula, symbol!)!;
  const prefix = multiplier(atomsOf(formula, symbol!));
  return number.isInteger() && prefix !== undefined
    ? both(`${prefix}${ateStem(symbol!)}ate(${roman(Number(number.n))})`)
    : undefined;
}

function neutralName(nodes: readonly FormulaNode[], formula: Formula): Pair | undefined {
  const elements = elementsIn(formula);
  if (elements.length === 1) return both(elementOf(elements[0]!).name);
  const [complex, ...others] = complexNodes(formula);
  if (complex && others.length === 0 && (nodes.length === 1 || complex === nodes)) return complexPair(describe(complex, formula));
  const isSalt = elements.some(isMetal) || complex !== undefined || writeNodes(nodes).includes('NH4');
  return isSalt ? saltName(ionsOf(nodes)) : moleculeName(nodes);
}

/** Cations, then anions, each in alphabetical order; numbers are not said. */
function saltName(ions: readonly SaltIon[] | undefined): Pair | undefined {
  if (!ions) return undefined;
  const named = ions.map((ion) => ({ pair: saltIonName(ion), positive: isPositive(ion) }));
  if (named.some(({ pair }) => pair === undefined)) return undefined;
  const side = (positive: boolean, at: 0 | 1) =>
    [...new Set(named.filter((ion) => ion.positive === positive).map(({ pair }) => pair![at]))].toSorted((one, other) =>
      one < other ? -1 : 1,
    );
  const text = (at: 0 | 1) => [...side(true, at), ...side(false, at)].join(' ');
  return side(true, 0).length > 0 && side(false, 0).length > 0 ? [text(0), text(1)] : undefined;
}

function isPositive(ion: SaltIon): boolean {
  return ion.kind === 'known' ? ion.ion.charge > 0 : ion.kind === 'complex' ? ion.complex.charge > 0 : ion.number.sign() > 0;
}

function saltIonName(ion: SaltIon): Pair | undefined {
  if (ion.kind === 'known') return [ion.ion.name, ion.ion.tradeName ?? ion.ion.name];
  if (ion.kind === 'complex') return complexPair(ion.complex);
  if (ion.number.sign() < 0) {
    const name = ideName(ion.symbol, ion.number);
    return name === undefined ? undefined : both(name);
  }
  return ion.number.isInteger() && isCationElement(ion.symbol) ? both(cationName(ion.symbol, Number(ion.number.n))) : undefined;
}

/** Two non-metals: `sulfur dioxide`, `dinitrogen tetroxide`. */
function moleculeName(nodes: readonly FormulaNode[]): Pair | undefined {
  const [first, second, ...more] = nodes;
  if (first?.kind !== 'element' || second?.kind !== 'element' || more.length > 0 || first.symbol === 'H') return undefined;
  const ide = ideOf(second.symbol);
  const [before, after] = [multiplier(first.count), second.count === 1 ? 'mono' : multiplier(second.count)];
  if (ide === undefined || before === undefined || after === undefined || second.symbol === 'H') return undefined;
  const counted = second.count === 1 && second.symbol !== 'O' ? ide : `${after}${ide}`.replace(/[ao]oxide$/, 'oxide');
  return both(`${before}${elementOf(first.symbol).name} ${counted}`);
}
