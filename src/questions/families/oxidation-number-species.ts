import { atomsOf, elementsIn } from '../../chemistry/composition.ts';
import { elementOf, isMetal } from '../../chemistry/elements.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { type State, unlikeStates } from '../../chemistry/oxidation-data.ts';
import { averageOxidationNumber, oxidationNumbers } from '../../chemistry/oxidation-numbers.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import { type Account, accountOf, numberFrom } from '../oxidation-account.ts';
import { bare } from '../without-states.ts';

/**
 * What has to be thought of: a neutral compound with one atom of the element · an ion with one · several atoms to share between ·
 * a complex with one kind of ligand, singly charged, or any other with charged ligands · oxygen in a peroxide · an ion with a peroxo bond · an average.
 */
export type Kind = 'compound' | 'ion' | 'several' | 'complex' | 'mixed complex' | 'peroxide' | 'peroxo ion' | 'average';

/** An element of a species whose oxidation number is asked. */
export interface Wanted {
  readonly formula: Formula;
  /** symbol */
  readonly element: string;
  readonly name: string;
  readonly kind: Kind;
  readonly account: Account;
  /** how many atoms are in which state, where they differ: the number asked for is then their average */
  readonly states?: readonly State[];
}

/** Elements whose number follows from a rule at once, so that it is no question. */
const BY_RULE = ['H', 'O', 'F', 'Li', 'Na', 'K', 'Mg', 'Ca', 'Ba', 'Al'];
const HALOGENS = ['Cl', 'Br', 'I'];
/** Left to organic chemistry, or with bonds that the rules of this subject do not see. */
const LEFT_OUT = ['CH3COO^-', 'CH3OH', 'C2H5OH', 'CN^-', 'SCN^-', 'KSCN', 'I3^-'];

/** Species that take part in none of our reactions, and are met in a course on complexes or on sulfur (from memory). */
const MET_ELSEWHERE: readonly string[] = [
  '[Co(NH3)5Cl]^2+',
  '[Co(NH3)3Cl3]',
  '[Cr(H2O)4Cl2]^+',
  '[Pt(NH3)2Cl4]',
  '[Ag(S2O3)2]^3-',
  '[Co(C2O4)3]^3-',
  'K4[Fe(CN)6]',
  'K2[PtCl6]',
  'K3[Cr(C2O4)3]',
  'Na3[Co(NO2)6]',
  'Na2S2O3',
  'Na2S4O6',
  'Na2S2O8',
];

const KNOWN = new WeakMap<Tables, readonly Wanted[]>();

/** Every species and every anhydrous substance of the tables in which one element's number can be asked; computed once. */
export function wantedIn(tables: Tables): readonly Wanted[] {
  let found = KNOWN.get(tables);
  if (!found) {
    const ours = [...tables.species.values(), ...tables.salts].map(({ formula }) => bare(formula));
    const formulas = [...ours, ...MET_ELSEWHERE.map((text) => parseFormula(text))];
    const all = new Map(formulas.filter(canBeAsked).map((formula) => [keyOf(formula), formula]));
    found = [...all.values()].flatMap((formula) => {
      const element = elementAsked(formula);
      const wanted = element && wantedOf(formula, element);
      return wanted ? [wanted] : [];
    });
    KNOWN.set(tables, found);
  }
  return found;
}

function canBeAsked(formula: Formula): boolean {
  const elements = elementsIn(formula);
  const isOrganic = elements.includes('C') && elements.includes('H') && elements.includes('N');
  return (
    formula.units.length === 1 &&
    elements.length > 1 &&
    !LEFT_OUT.includes(keyOf(formula)) &&
    !(isOrganic && formula.units[0]!.nodes.every(({ kind }) => kind === 'element')) &&
    // A complex written without its bracket hides what the ligands are.
    !keyOf(formula).includes('(H2O)3(OH)') &&
    !keyOf(formula).includes('(H2O)4(OH)')
  );
}

/** The centre of a complex, the oxygen of a peroxide, or the one element that no rule gives. */
function elementAsked(formula: Formula): string | undefined {
  const open = elementsIn(formula).filter((symbol) => !BY_RULE.includes(symbol));
  if (keyOf(formula).includes('[')) return open.find(isMetal);
  if (open.length === 0) return averageOxidationNumber(formula, 'O')?.toNumber() === -1 ? 'O' : undefined;
  if (open.length === 1) return open[0];
  const metals = open.filter(isMetal);
  return metals.length === 1 && open.length === 2 && HALOGENS.includes(open.find((symbol) => !isMetal(symbol))!)
    ? metals[0]
    : undefined;
}

/** An element of a species as something to be asked; undefined when the rules, or a pupil's sum, do not give its number. */
export function wantedOf(formula: Formula, element: string): Wanted | undefined {
  const account = accountOf(formula, element);
  if (!account) return undefined;
  const kind = kindOf(formula, element, account);
  if (!kind) return undefined;
  const unlike = unlikeStates(keyOf(formula));
  const states = unlike?.element === element ? { states: unlike.states } : {};
  return { formula, element, name: elementOf(element).name, kind, account, ...states };
}

function kindOf(formula: Formula, element: string, account: Account): Kind | undefined {
  const number = numberFrom(account);
  const peroxo = oxidationNumbers(formula).sites.some(
    ({ element: symbol, number: state }) => symbol === 'O' && state.toNumber() === -1,
  );
  if (element === 'O') return 'peroxide';
  if (peroxo) return 'peroxo ion';
  if (keyOf(formula).includes('[')) return complexKind(formula, account);
  if (account.charge === 0 && HALOGENS.includes(element) && number.sign() < 0) return undefined;
  if (!number.isInteger()) return 'average';
  if (atomsOf(formula, element) > 1) return 'several';
  return account.charge === 0 ? 'compound' : 'ion';
}

/** With neutral ligands alone the charge is the number: nothing to find. */
function complexKind({ units }: Formula, { others }: Account): Kind | undefined {
  if (others.every(({ each }) => each > 0)) return undefined;
  const [bracket, ...outside] = units[0]!.nodes;
  const isPlain = outside.length === 0 && bracket?.kind === 'group' && bracket.nodes.length === 2;
  return isPlain && others[0]?.each === -1 ? 'complex' : 'mixed complex';
}
