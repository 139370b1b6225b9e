import { elementsIn } from '../../chemistry/composition.ts';
import type { Couple, Medium } from '../../chemistry/couple.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { acidStands } from '../acid-stands.ts';
import type { Ask } from '../family.ts';
import { inUse } from '../half-cell.ts';
import { isMain } from '../main-couple.ts';
import { isBanned, mayMeet } from '../may-meet.ts';
import { fallOut, leavesAlone, mediumOf, reactsCleanly } from '../meeting.ts';
import { bare } from '../without-states.ts';

/** One species that is asked about: the oxidised or the reduced form of its couple. */
export interface Asked {
  readonly couple: Couple;
  readonly form: 'oxidised' | 'reduced';
}

/** Two species in printed order: of opposite forms, or a trap of two oxidising or two reducing agents. */
export interface PairDraw {
  readonly shape: 'pair';
  readonly first: Asked;
  readonly second: Asked;
  readonly medium: Medium;
}

/** One species against three reagents: one reacts, one is too weak, one is the same kind of agent. */
export interface ShelfDraw {
  readonly shape: 'shelf';
  readonly subject: Asked;
  readonly reacts: Asked;
  readonly unable: Asked;
  readonly alike: Asked;
  /** the three reagents in printed order */
  readonly order: readonly Asked[];
  readonly medium: Medium;
}

export type PredictDraw = PairDraw | ShelfDraw;

/** Couples that a class knows. */
const FAMILIAR: readonly string[] = [
  'Mg^2+/Mg',
  'Zn^2+/Zn',
  'Fe^2+/Fe',
  'Co^2+/Co',
  'Ni^2+/Ni',
  'Sn^2+/Sn',
  'Pb^2+/Pb',
  'Cu^2+/Cu',
  'Ag^+/Ag',
  'Fe^3+/Fe^2+',
  'Sn^4+/Sn^2+',
  'V^3+/V^2+',
  'Cl2/Cl^-',
  'Br2/Br^-',
  'I2/I^-',
  'MnO4^-/Mn^2+',
  'Cr2O7^2-/Cr^3+',
];
/** Too poisonous to be spoken of as on the shelf, or a species that takes either part too readily to be called one kind of agent. */
const LEFT_OUT: readonly string[] = ['Hg^2+', 'Hg', 'Cd', '[Fe(CN)6]^4-', 'H2O2', 'H^+', 'O2', 'NO3^-'];
/** How often each is tried for; pairs that do nothing are found more easily than pairs that react. */
const OUTCOMES = [
  { item: 'reaction', weight: 9 },
  { item: 'none', weight: 9 },
  { item: 'oxidants', weight: 4 },
  { item: 'reductants', weight: 3 },
] as const;
/** Nearer than this, concentrations decide (the threshold for drawing). */
const LEAST = Rational.parse('0.10');

export function drawPrediction(draws: Draws, tables: Tables, { level }: Ask): PredictDraw | undefined {
  const usable = tables.couples.filter(
    (couple) =>
      inUse(couple) &&
      (couple.medium === 'acid' || couple.medium === 'neutral') &&
      !LEFT_OUT.some((key) => key === couple.oxidisedKey || key === couple.reducedKey),
  );
  return level === 'core'
    ? drawPair(
        draws,
        usable.filter(({ id }) => FAMILIAR.includes(id)),
        tables,
      )
    : drawShelf(draws, usable, tables);
}

function drawPair(draws: Draws, couples: readonly Couple[], tables: Tables): PairDraw | undefined {
  const [one, other] = draws.shuffle(couples) as [Couple, Couple];
  const outcome = draws.weighted(OUTCOMES);
  const [high, low] = one.printed.value.compare(other.printed.value) > 0 ? [one, other] : [other, one];
  if (!apart(high, low) || isOddForMetals(high, low, tables)) return undefined;
  const forms = { reaction: [true, false], none: [false, true], oxidants: [true, true], reductants: [false, false] } as const;
  const [highTakes, lowTakes] = forms[outcome];
  const asked = [askedOf(high, highTakes), askedOf(low, lowTakes)] as const;
  const medium = mediumOf([high, low], asked.map(formulaOf));
  const happens = reactsCleanly(high, low, tables) && mayMeet(high.oxidisedKey, low.reducedKey, tables, medium);
  const isTrap = outcome === 'oxidants' || outcome === 'reductants';
  if (isTrap && asked.some((each) => takesBothParts(each, tables))) return undefined;
  if (!happens || (outcome !== 'reaction' && !keepsApart(asked[0], asked[1], medium, tables))) return undefined;
  const [first, second] = draws.shuffle(asked) as [Asked, Asked];
  return { shape: 'pair', first, second, medium };
}

function drawShelf(draws: Draws, usable: readonly Couple[], tables: Tables): ShelfDraw | undefined {
  const pool = shelf(usable, draws.chance(2, 3), tables);
  const subject = askedOf(draws.pick(pool), draws.chance(1, 2));
  const isOxidant = subject.form === 'oxidised';
  if (!isMain(subject.couple, subject.form, mediumFor(subject, subject), tables)) return undefined;
  const others = draws.shuffle(pool.filter((couple) => apart(couple, subject.couple)));
  const isBelow = ({ couple }: Asked) => couple.printed.value.compare(subject.couple.printed.value) < 0;
  const find = (takes: boolean, taken: readonly Asked[], test: (asked: Asked) => boolean) =>
    others
      .filter((couple) => taken.every((each) => apart(couple, each.couple)))
      .map((couple) => askedOf(couple, takes))
      .find((asked) => isMain(asked.couple, asked.form, mediumFor(subject, asked), tables) && test(asked));
  const isIdle = (asked: Asked) => keepsApart(subject, asked, mediumFor(subject, asked), tables);
  const reacts = find(!isOxidant, [], (asked) => isBelow(asked) === isOxidant && happens(subject, asked, tables));
  const unable = reacts && find(!isOxidant, [reacts], (asked) => isBelow(asked) !== isOxidant && isIdle(asked));
  const alike = unable && find(isOxidant, [reacts, unable], isIdle);
  if (!alike) return undefined;
  const all = [subject, reacts, unable, alike];
  const medium = mediumOf(
    all.map(({ couple }) => couple),
    all.map(formulaOf),
  );
  if (medium === 'acid' && !acidCanBe(all, tables)) return undefined;
  return { shape: 'shelf', subject, reacts, unable, alike, order: draws.shuffle([reacts, unable, alike]), medium };
}

/** No species is forbidden with acid, and an acid can be added to the subject, which stands first, with each of the others. */
function acidCanBe([subject, ...others]: readonly Asked[], tables: Tables): boolean {
  const key = (asked: Asked) => keyOf(formulaOf(asked));
  return others.every(
    (other) =>
      acidStands([key(subject!), key(other)], tables) &&
      [subject!, other].every((asked) => !isBanned([key(asked), 'HCl'], tables, 'acid')),
  );
}

/** Metals and acid are not offered together: the acid itself would take the metal. */
function shelf(usable: readonly Couple[], isAcid: boolean, tables: Tables): Couple[] {
  return usable.filter((couple) =>
    isAcid
      ? tables.speciesOf(couple.reducedKey).role !== 'metal'
      : mediumOf([couple], [couple.oxidised, couple.reduced]) === 'neutral',
  );
}

const askedOf = (couple: Couple, takes: boolean): Asked => ({ couple, form: takes ? 'oxidised' : 'reduced' });

/** The species itself, as it stands in prose. */
export const formulaOf = ({ couple, form }: Asked): Formula => bare(couple[form]);

const mediumFor = (one: Asked, other: Asked): Medium => mediumOf([one.couple, other.couple], [one, other].map(formulaOf));

function happens(one: Asked, other: Asked, tables: Tables): boolean {
  const [oxidant, reductant] = one.form === 'oxidised' ? [one.couple, other.couple] : [other.couple, one.couple];
  return (
    reactsCleanly(oxidant, reductant, tables) && mayMeet(oxidant.oxidisedKey, reductant.reducedKey, tables, mediumFor(one, other))
  );
}

/** Two species that can be brought together and then do nothing to each other. */
function keepsApart(one: Asked, other: Asked, medium: Medium, tables: Tables): boolean {
  const [a, b] = [formulaOf(one), formulaOf(other)];
  const twoMetals = [one, other].every(
    ({ couple, form }) => form === 'reduced' && tables.speciesOf(couple.reducedKey).role === 'metal',
  );
  return (
    !twoMetals &&
    !fallOut(one.couple, other.couple, tables) &&
    mayMeet(keyOf(a), keyOf(b), tables, medium) &&
    leavesAlone(a, b, medium, tables)
  );
}

/** An ion that stands between two states: the half-equation printed tells one of its parts alone, so it is no example of one kind. */
function takesBothParts(asked: Asked, { couples }: Tables): boolean {
  const formula = formulaOf(asked);
  const key = keyOf(formula);
  return (
    formula.charge !== 0 &&
    couples.some(
      (each) =>
        !each.calculationOnly &&
        each.medium !== 'alkali' &&
        (asked.form === 'oxidised' ? each.reducedKey : each.oxidisedKey) === key,
    )
  );
}

/** In core questions a metal meets metal ions, halogens and iron(III), not the oxidants that need acid. */
function isOddForMetals(one: Couple, other: Couple, tables: Tables): boolean {
  const hasMetal = [one, other].some(({ reducedKey }) => tables.speciesOf(reducedKey).role === 'metal');
  return hasMetal && [one, other].some(({ medium }) => medium === 'acid');
}

/** Different elements, and potentials far enough apart. */
function apart(one: Couple, other: Couple): boolean {
  const elements = ({ oxidised, reduced }: Couple) =>
    [...elementsIn(oxidised), ...elementsIn(reduced)].filter((symbol) => symbol !== 'O' && symbol !== 'H');
  const shared = elements(one).some((symbol) => elements(other).includes(symbol));
  return !shared && one.printed.value.minus(other.printed.value).abs().compare(LEAST) >= 0;
}
