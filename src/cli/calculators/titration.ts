import type { Medium } from '../../chemistry/couple.ts';
import type { Facts } from '../../chemistry/facts.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molar-mass.ts';
import { relocated } from '../../chemistry/parse-equation.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { type Titration, type TitrationAnswer, type WorkingLine, workTitration } from '../../chemistry/titration.ts';
import { type Concordance, concordantTitres } from '../../chemistry/titres.ts';
import { type Decimal, figuresOf } from '../../exact/decimal.ts';
import { Fault } from '../../exact/fault.ts';
import { Rational } from '../../exact/rational.ts';
import { exactText } from '../tell.ts';
import { type NumberName, type Quantities, type Quantity, readQuantities, readTitres } from './quantities.ts';
import type { Shelf } from './reactants.ts';
import { perAnalyte, type Reaction, reactionOf } from './titration-ratio.ts';

/** One line of `couplet titration --json`: a value exact, and its unit. */
export interface TitrationLine {
  readonly quantity: WorkingLine['what'];
  readonly value: string;
  readonly unit: string;
}

/** What `couplet titration --json` prints. The answer is the last line of the working. */
export interface TitrationJson {
  readonly answer: TitrationLine;
  readonly working: readonly TitrationLine[];
}

/** What a titration is looked up in; each is read when it is first asked for. */
export interface Bench {
  readonly shelf: () => Shelf & { readonly facts: Facts };
  readonly masses: () => ReadonlyMap<string, Decimal>;
}

/** A titration worked out, with what it was worked out from. */
export interface WorkedTitration extends TitrationAnswer {
  readonly given: Titration;
  /** numbers as they were typed, `0.0200` */
  readonly typed: Quantities['numbers'];
  readonly reaction?: Reaction;
  readonly titres?: Concordance & { readonly all: readonly Decimal[] };
  readonly sought?: Formula;
  /** figures of the least precise quantity, for the printed answer */
  readonly figures: number;
}

/**
 * @param texts quantities by name, `titre=23.40`
 * @throws Fault `no-ratio`, `not-enough`, or what is wrong with a quantity
 */
export function titration(texts: readonly string[], medium: Medium, bench: Bench): WorkedTitration {
  const quantities = readQuantities(texts);
  const titres = titresIn(quantities);
  const reaction = reactionIn(quantities, medium, bench);
  const sought = formulaOf('sought', quantities);
  const number = (name: NumberName) => quantities.numbers.get(name)?.value;
  const given: Titration = withoutAbsent({
    ratio: number('ratio') ?? reaction?.ratio ?? Rational.one,
    titrantConcentration: number('titrant-concentration'),
    titre: titres?.mean ?? number('titre'),
    aliquot: number('aliquot'),
    analyteConcentration: number('analyte-concentration'),
    flask: number('flask'),
    taken: number('taken'),
    sample: number('sample'),
    molarMass: number('molar-mass') ?? (sought && molarMass(sought, bench.masses()).value),
    perAnalyte: number('per-analyte') ?? (sought && standsFor(sought, quantities, reaction)),
  });
  const figures = leastFigures([...quantities.numbers.values()], titres?.all ?? []);
  return { ...workTitration(given), given, typed: quantities.numbers, figures, ...withoutAbsent({ reaction, titres, sought }) };
}

/** How many of what is sought one analyte stands for; one when nothing is said of the analyte. */
function standsFor(sought: Formula, quantities: Quantities, reaction: Reaction | undefined): Rational | undefined {
  const analyte = reaction ? parseFormula(reaction.analyte) : formulaOf('analyte', quantities);
  return analyte && perAnalyte(sought, analyte);
}

export function titrationAnswer({ answer, working }: WorkedTitration): TitrationJson {
  const line = ({ what, value, unit }: WorkingLine): TitrationLine => ({ quantity: what, value: exactText(value), unit });
  return { answer: line(answer), working: working.map(line) };
}

type Present<T> = { [K in keyof T]: Exclude<T[K], undefined> };

function withoutAbsent<T extends object>(all: T): Present<T> {
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Present<T>;
}

function titresIn({ numbers, texts }: Quantities): WorkedTitration['titres'] | undefined {
  const text = texts.get('titres');
  if (text === undefined) return undefined;
  if (numbers.has('titre')) throw new Fault('doubled-quantity', 'expected `titre` or `titres`, found both');
  const all = readTitres(text);
  return { ...concordantTitres(all), all };
}

/** @throws Fault `no-ratio` when neither the ratio nor both species are given */
function reactionIn({ numbers, texts }: Quantities, medium: Medium, bench: Bench): Reaction | undefined {
  if (numbers.has('ratio')) return undefined;
  const [titrant, analyte] = [texts.get('titrant'), texts.get('analyte')];
  if (titrant !== undefined && analyte !== undefined) return reactionOf(titrant, analyte, medium, bench.shelf());
  const message = 'expected `titrant=…` and `analyte=…` (species), or `ratio=…` (moles of analyte for one of titrant)';
  throw new Fault('no-ratio', message);
}

function formulaOf(name: 'sought' | 'analyte', { texts }: Quantities): Formula | undefined {
  const text = texts.get(name);
  return text === undefined ? undefined : relocated(() => parseFormula(text), `${name}=${text}`, name.length + 1);
}

function leastFigures(quantities: readonly Quantity[], titres: readonly Decimal[]): number {
  const figures = [...quantities.flatMap((each) => each.figures ?? []), ...titres.map(figuresOf)];
  return Math.min(4, Math.max(2, ...(figures.length === 0 ? [3] : [Math.min(...figures)])));
}
