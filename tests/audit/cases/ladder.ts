import type { Couple } from '../chemistry/couples.ts';
import { sharedElement } from '../chemistry/half-equations.ts';
import { isNamedIn } from '../chemistry/names.ts';
import { Unreadable } from '../engine/case.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import { couplesIn } from './potentials.ts';

export interface Rung {
  readonly couple: Couple;
  readonly from: string;
  readonly to: string;
}

/** What the printed potentials say of a species with an excess of a reagent. */
export interface Ladder {
  readonly start: string;
  readonly element: string;
  readonly reagent: Couple;
  readonly isReduction: boolean;
  readonly rungs: readonly Rung[];
  /** the best step from the last species, which does not take place */
  readonly next: Rung;
}

interface Reagent {
  readonly couple: Couple;
  readonly isReduction: boolean;
}

export function ladderIn(question: ReadQuestion): Ladder {
  const couples = couplesIn(question);
  const [first] = everyToken(question.stem.flat(), 'species');
  if (!first) throw new Unreadable('the species at the start');
  const start = first.species.key;
  const found = reagentsIn(question, couples, start)
    .map((reagent) => climb(start, reagent, couples))
    .filter((each) => each !== undefined);
  if (found.length !== 1) throw new Unreadable(`${found.length} reagents that ${start} could react with in the printed table`);
  return found[0]!;
}

/** Species that the stem names, in their couples: what gives electrons as the lower form, what takes them as the upper. */
function reagentsIn({ stemText }: ReadQuestion, couples: readonly Couple[], start: string): Reagent[] {
  const others = couples.filter(({ oxidised, reduced }) => oxidised !== start && reduced !== start);
  return [
    ...others.filter(({ reduced }) => isNamedIn(reduced, stemText)).map((couple) => ({ couple, isReduction: true })),
    ...others.filter(({ oxidised }) => isNamedIn(oxidised, stemText)).map((couple) => ({ couple, isReduction: false })),
  ];
}

/** @returns undefined when the reagent takes the species nowhere */
function climb(start: string, { couple: reagent, isReduction }: Reagent, couples: readonly Couple[]): Ladder | undefined {
  const rungs: Rung[] = [];
  let at = start;
  for (;;) {
    const next = bestFrom(
      at,
      isReduction,
      couples.filter((couple) => couple !== reagent),
    );
    if (!next) {
      if (rungs.length === 0) return undefined;
      throw new Unreadable(`what ${at} would turn into next`);
    }
    const difference = next.couple.potential.subtract(reagent.potential);
    const goes = (isReduction ? difference : difference.negative()).side() > 0;
    if (!goes) {
      const element = sharedElement(start, next.to) ?? '';
      return rungs.length === 0 ? undefined : { start, element, reagent, isReduction, rungs, next };
    }
    rungs.push(next);
    at = next.to;
  }
}

/** The step that the potentials favour most: the most positive as a reduction, the least positive as an oxidation. */
function bestFrom(from: string, isReduction: boolean, couples: readonly Couple[]): Rung | undefined {
  const steps = couples
    .map((couple) =>
      isReduction ? { couple, from: couple.oxidised, to: couple.reduced } : { couple, from: couple.reduced, to: couple.oxidised },
    )
    .filter((step) => step.from === from)
    .sort((a, b) => b.couple.potential.compare(a.couple.potential));
  return isReduction ? steps[0] : steps.at(-1);
}
