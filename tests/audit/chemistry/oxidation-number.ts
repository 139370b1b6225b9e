import { Fraction } from '../exact/fraction.ts';
import { speciesOf } from './sides.ts';

/** How an oxidation number comes about: charge, less what everything else brings, shared between the atoms of the element. */
export interface Account {
  readonly charge: number;
  /** other atoms, or whole ligands and ions, and what each brings */
  readonly others: readonly { readonly count: number; readonly each: number }[];
  readonly atoms: number;
}

/** Metals with one oxidation number in all their compounds, and fluorine (IUPAC Gold Book, rules of oxidation number). */
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
  NO: 0,
  NH2CH2CH2NH2: 0,
  C2O4: -2,
  SO4: -2,
  NO3: -1,
  NH4: 1,
  S2O3: -2,
  SCN: -1,
  NCS: -1,
  NO2: -1,
  CO3: -2,
  C10H12N2O8: -4,
  Cl: -1,
  Br: -1,
  I: -1,
  F: -1,
};

/** Peroxides, and how many of their oxygen atoms hold to one another: those count −1. */
const PEROXO: Readonly<Record<string, number>> = {
  H2O2: 2,
  'HO2^-': 2,
  Na2O2: 2,
  BaO2: 2,
  'O2^2-': 2,
  'S2O8^2-': 2,
  K2S2O8: 2,
  Na2S2O8: 2,
  CrO5: 4,
};

/** Hydrides of metals, in which hydrogen is −1. */
const HYDRIDES: ReadonlySet<string> = new Set(['NaH', 'CaH2', 'LiH', 'KH', 'MgH2', 'NaBH4', 'LiAlH4']);

/** @returns undefined when two elements are open, or the element is not in it */
export function accountOf(key: string, element: string): Account | undefined {
  const { atoms, charge } = speciesOf(key);
  const own = atoms.get(element);
  if (own === undefined) return undefined;
  if (atoms.size === 1) return { charge, others: [], atoms: own };
  const ligands = ligandsOf(key, element);
  if (ligands) return { charge, others: ligands, atoms: own };
  const others: { count: number; each: number }[] = [];
  for (const [other, count] of atoms) {
    if (other === element) continue;
    const found = other === 'O' ? oxygens(key, count, atoms) : plainOther(key, other, count, atoms);
    if (!found) return undefined;
    others.push(...found);
  }
  return { charge, others, atoms: own };
}

export const sumOf = ({ others }: Account): number => others.reduce((sum, { count, each }) => sum + count * each, 0);

/** Ligands in brackets that not every class has met: as ions, with the charge they must be told with. */
export function unusualLigands(key: string): string[] {
  const usual = ['OH', 'CN', 'NH3', 'H2O', 'CO', 'Cl', 'Br', 'I', 'F'];
  const inside = /\[(.*)\]/.exec(key)?.[1] ?? '';
  const groups = [...inside.matchAll(/\(([A-Za-z0-9]+)\)/g)].map(([, group]) => group!);
  return groups
    .filter((group) => !usual.includes(group))
    .map((group) => {
      const charge = GROUPS[group] ?? 0;
      return charge === 0 ? group : `${group}^${Math.abs(charge) === 1 ? '' : Math.abs(charge)}${charge < 0 ? '-' : '+'}`;
    });
}

/** Charge of what stands in square brackets, from that of the whole and the single ions around it. */
export function chargeInBrackets(key: string): number {
  const { charge } = speciesOf(key);
  const [, before = '', after = ''] = /^([^[]*)\[.*\]([^^]*)(?:\^.*)?$/.exec(key) ?? [];
  const ions = [...`${before}${after}`.matchAll(/([A-Z][a-z]?)(\d*)/g)];
  return ions.reduce((left, [, ion, digits]) => left - (FIXED[ion!] ?? GROUPS[ion!] ?? 0) * Number(digits || '1'), charge);
}

/** Oxidation number of an element in a species; an average where its atoms are unlike. @returns undefined as `accountOf` does */
export function oxidationNumber(key: string, element: string): Fraction | undefined {
  // Where oxygen itself is asked for, the bonds between oxygens tell it, and nothing is open.
  const { atoms } = speciesOf(key);
  if (element === 'O' && atoms.size > 1 && !atoms.has('F') && PEROXO[key] === undefined) return Fraction.of(-2);
  if (element === 'O' && PEROXO[key] !== undefined) {
    const [all, peroxo] = [atoms.get('O')!, PEROXO[key]!];
    return Fraction.of(-2 * (all - peroxo) - peroxo, all);
  }
  const account = accountOf(key, element);
  return account && Fraction.of(account.charge - sumOf(account), account.atoms);
}

function oxygens(key: string, count: number, atoms: ReadonlyMap<string, number>): Account['others'] {
  if (atoms.has('F')) return [{ count, each: 2 }];
  const peroxo = PEROXO[key] ?? 0;
  return [...(count > peroxo ? [{ count: count - peroxo, each: -2 }] : []), ...(peroxo > 0 ? [{ count: peroxo, each: -1 }] : [])];
}

/** What an element other than oxygen counts beside the one that is asked for. */
function plainOther(
  key: string,
  element: string,
  count: number,
  atoms: ReadonlyMap<string, number>,
): Account['others'] | undefined {
  if (element === 'H') return [{ count, each: HYDRIDES.has(key) ? -1 : 1 }];
  const fixed = FIXED[element];
  if (fixed !== undefined) return [{ count, each: fixed }];
  if (atoms.has('O')) return undefined;
  if (['Cl', 'Br', 'I'].includes(element)) return [{ count, each: -1 }];
  if (element === 'S') return [{ count, each: -2 }];
  return element === 'N' ? [{ count, each: -3 }] : undefined;
}

/** Ligands or ions around the first element of a complex or a salt, each as a whole, and the ions outside its brackets. */
function ligandsOf(key: string, element: string): Account['others'] | undefined {
  const [, before = '', open, metal, groups, after = ''] =
    /^((?:[A-Z][a-z]?\d*)*?)(\[?)([A-Z][a-z]?)((?:\([A-Za-z0-9]+\)\d*|Cl\d*|Br\d*|I\d*)+)\]?((?:Cl|Br|I)?\d*)(?:\^.*)?$/.exec(
      key,
    ) ?? [];
  if (metal !== element || groups === undefined || (open === '' && (!groups.includes('(') || before !== ''))) return undefined;
  const others: { count: number; each: number }[] = [];
  for (const [, bracketed, bare, digits] of `${groups}${after}`.matchAll(/(?:\(([A-Za-z0-9]+)\)|(Cl|Br|I))(\d*)/g)) {
    const each = GROUPS[(bracketed ?? bare)!];
    if (each === undefined) return undefined;
    others.push({ count: Number(digits || '1'), each });
  }
  for (const [, outer, digits] of before.matchAll(/([A-Z][a-z]?)(\d*)/g)) {
    const each = outer === 'H' ? 1 : FIXED[outer!];
    if (each === undefined) return undefined;
    others.push({ count: Number(digits || '1'), each });
  }
  return others;
}
