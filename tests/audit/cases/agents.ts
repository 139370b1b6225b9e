import type { Couple } from '../chemistry/couples.ts';
import { combined } from '../chemistry/half-equations.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import type { Answers } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';

/** A species that is to react, in its couple. */
export interface Agent {
  readonly key: string;
  readonly couple: Couple;
  /** it can take electrons, being the oxidised form */
  readonly takes: boolean;
}

/** Species in couples of a table, each in a couple of its own. @returns undefined when they cannot be shared out */
export function agentsOf(keys: readonly string[], couples: readonly Couple[]): Agent[] | undefined {
  const [first, ...rest] = keys;
  if (first === undefined) return [];
  for (const couple of couples) {
    if (couple.oxidised !== first && couple.reduced !== first) continue;
    const others = agentsOf(
      rest,
      couples.filter((each) => each !== couple),
    );
    if (others) return [{ key: first, couple, takes: couple.oxidised === first }, ...others];
  }
  return undefined;
}

export const said = (...marks: string[]): Answer => ({ kind: 'said', marks });

export const marksAt = (answers: Answers, id: string): readonly string[] => {
  const answer = answers.get(id);
  return answer?.kind === 'said' ? answer.marks : [];
};

export const valueAt = (answers: Answers, id: string): Fraction => {
  const answer = answers.get(id);
  return answer?.kind === 'number' ? answer.value : Fraction.zero;
};

export const voltMark = (value: Fraction): string => numberMark(writeNumber(value, { places: 2 }, true), 'V');
export const speciesMarks = (...keys: string[]): string[] => keys.map((key) => `species ${key}`);
export const coupleMarks = ({ oxidised, reduced, potential }: Couple): string[] => [
  ...speciesMarks(oxidised, reduced),
  voltMark(potential),
];
export const equationOf = (reduced: Couple, oxidised: Couple): Answer => ({
  kind: 'equation',
  sides: combined(reduced.half, oxidised.half),
});
/** `X and Y on the left, their products on the right` */
export const directionMarks = (reduced: Couple, oxidised: Couple): string[] =>
  speciesMarks(reduced.oxidised, oxidised.reduced, reduced.reduced, oxidised.oxidised);
