import { combined } from '../chemistry/half-equations.ts';
import { namesOf } from '../chemistry/names.ts';
import { count, type Sides, speciesOf } from '../chemistry/sides.ts';
import { Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import type { PrintedNumber } from '../exact/printed-number.ts';
import type { ReadQuestion, ReadTable } from '../reading/sheet.ts';
import { runTokensText } from '../reading/token-text.ts';
import { everyToken } from '../reading/tokens.ts';
import { type Half, halvesTold } from './halves-told.ts';

/** What the page says of two reagents that react, read and sorted. */
export interface Reagents {
  readonly known: string;
  readonly found: string;
  /** formula of what is weighed out, or is to be */
  readonly knownSalt: string | undefined;
  readonly foundSalt: string | undefined;
  readonly concentration: PrintedNumber | undefined;
  readonly volume: PrintedNumber | undefined;
  readonly mass: PrintedNumber | undefined;
  readonly foundConcentration: PrintedNumber | undefined;
  readonly volumeUnit: string;
  /** relative atomic masses as printed */
  readonly masses: ReadonlyMap<string, PrintedNumber>;
  readonly halves: [Half, Half] | undefined;
  /** the reaction: printed, or made of the half-equations */
  readonly equation: Sides;
}

interface Reading {
  readonly text: string;
  readonly species: string | undefined;
  readonly number: PrintedNumber;
  readonly unit: string;
}

export function reagentsIn(question: ReadQuestion): Reagents {
  const [one, other] = everyToken(question.stem.flat(), 'species').map(({ species }) => species.key);
  if (one === undefined || other === undefined) throw new Unreadable('the two reagents');
  const readings = question.tables
    .filter(({ header }) => header.join() === 'Reading,Value')
    .flatMap(({ rows }) => rows.map(readingOf));
  const volume = readings.find(({ text }) => text.startsWith('volume of'));
  const mass = readings.find(({ text }) => text.startsWith('mass of'));
  const strengths = readings.filter(({ text }) => text.startsWith('concentration of'));
  const solution = /^volume of the (.*) solution$/.exec(volume?.text ?? '')?.[1];
  const strength = strengths.find(({ text }) => solution !== undefined && text.endsWith(` in the ${solution} solution`));
  const known = strength?.species ?? (mass && reagentOf(mass, [one, other]));
  if (known === undefined || ![one, other].includes(known)) throw new Unreadable('which reagent is measured');
  const measured = [strength, ...strengths].flatMap((each) => (each?.species === undefined ? [] : [each.species]));
  if (measured.some((key) => ![one, other].includes(key))) throw new Unreadable('a concentration of one of the two reagents');
  const found = known === one ? other : one;
  const halves = halvesTold(question, known, found);
  const printed = everyToken(question.stem.flat(), 'equation')[0]?.equation;
  if (!printed && !halves) throw new Unreadable('the reaction, or what turns into what');
  return {
    known,
    found,
    knownSalt: mass && (mass.species ?? known),
    foundSalt: foundSaltIn(question, found),
    concentration: strength?.number,
    volume: volume?.number,
    mass: mass?.number,
    foundConcentration: strengths.find((each) => each !== strength)?.number,
    // Both sets of units go together: mol dm⁻³ with cm³, mol/L with mL.
    volumeUnit: volume?.unit ?? (strengths.some(({ unit }) => unit === 'mol/L') ? 'mL' : 'cm^3'),
    masses: massesIn(question.tables),
    halves,
    equation: printed ?? combined(halves![0].half, halves![1].half),
  };
}

function readingOf(cells: ReadTable['rows'][number]): Reading {
  const [what = [], value = []] = cells;
  const [number] = everyToken(value, 'number');
  if (!number) throw new Unreadable(`the value of ${runTokensText(what)}`);
  return {
    text: runTokensText(what),
    species: everyToken(what, 'species')[0]?.species.key,
    number: number.number,
    unit: number.unit,
  };
}

/** The reagent that a weighed substance brings: the one that its name names, or whose elements it holds. */
function reagentOf({ text, species }: Reading, keys: readonly string[]): string | undefined {
  const named = keys.filter((key) => namesOf(key).some((name) => text.includes(name)));
  if (named.length === 1) return named[0];
  const atoms = species === undefined ? undefined : speciesOf(species).atoms;
  const held = keys.filter((key) =>
    [...speciesOf(key).atoms.keys()].every((element) => element === 'O' || element === 'H' || atoms?.has(element)),
  );
  return held.length === 1 ? held[0] : undefined;
}

/** Formula of what is to be weighed: printed in the last prompt, or the metal itself. */
function foundSaltIn({ parts }: ReadQuestion, found: string): string | undefined {
  const last = parts.at(-1);
  if (!last || !/\bmass\b|\bgrams\b/.test(runTokensText(last.prose[0] ?? []))) return undefined;
  return everyToken(last.prose[0] ?? [], 'species')[0]?.species.key ?? found;
}

function massesIn(tables: readonly ReadTable[]): Map<string, PrintedNumber> {
  const table = tables.find(({ header }) => header[0] === 'Element');
  const numbers = (table?.rows[0] ?? []).slice(1).flatMap((cell) => everyToken(cell, 'number'));
  return new Map(
    (table?.header ?? []).slice(1).flatMap((element, at) => (numbers[at] ? [[element, numbers[at].number] as const] : [])),
  );
}

/** How many of two species react with one another, in the smallest whole numbers; one of a species that does not stand on the left. */
export function ratioIn(sides: Sides, found: string, known: string): { readonly left: Fraction; readonly right: Fraction } {
  const often = (key: string) => (count(sides.left, key).side() === 0 ? Fraction.one : count(sides.left, key));
  const share = often(found).divide(often(known));
  return { left: Fraction.of(share.above), right: Fraction.of(share.below) };
}
