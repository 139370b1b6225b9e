import { canonical, type Sides, turnedRound } from '../chemistry/sides.ts';
import type { Ledger, Place } from '../engine/ledger.ts';
import type { ReadMarkScheme } from '../reading/scheme.ts';
import type { ReadQuestion, ReadSheet } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';

/**
 * No question answers another of its paper: an equation that is an answer of one (either way round, for half-equations are printed as
 * reductions) is printed nowhere in another.
 */
export function auditCueing(ledger: Ledger, place: Place, sheet: ReadSheet, scheme: ReadMarkScheme): void {
  const printed = new Map(sheet.questions.map((question) => [question.number, equationsOn(question)] as const));
  for (const { question, label, answers } of scheme.blocks) {
    const own = everyToken(answers.flat(), 'equation').map(({ equation }) => key(equation));
    const told = [...printed].filter(([number, equations]) => number !== question && own.some((each) => equations.has(each)));
    ledger.noteAll(
      { ...place, label },
      'no question answers another',
      told.map(([number]) => `the answer of ${label} is printed in question ${number}`),
    );
  }
}

/** Equations in stem, tables, prompts, options and lines printed for the pupil; those of a question to itself are another check's affair. */
function equationsOn({ stem, tables, parts }: ReadQuestion): Set<string> {
  const cells = tables.flatMap(({ rows }) => rows.flat(2));
  const inParts = parts.flatMap(({ prose, given, options }) => [
    ...prose.flat(),
    ...given.flatMap(({ left, right }) => [...left, ...right]),
    ...options.flatMap(({ content }) => content),
  ]);
  return new Set(everyToken([...stem.flat(), ...cells, ...inParts], 'equation').map(({ equation }) => key(equation)));
}

const key = (sides: Sides): string => [canonical(sides), canonical(turnedRound(sides))].sort()[0]!;

/** Letters of right options: each about as often as the others, none three times running. */
export function auditKeys(ledger: Ledger, place: Place, scheme: ReadMarkScheme): void {
  const keys = scheme.blocks.flatMap(({ answers }) => {
    const [first] = answers[0] ?? [];
    const letter = first?.kind === 'words' ? /^([A-H])\s/.exec(first.text)?.[1] : undefined;
    return letter === undefined ? [] : [letter];
  });
  if (keys.length === 0) return;
  const runs = keys.filter((letter, at) => at >= 2 && keys[at - 1] === letter && keys[at - 2] === letter);
  ledger.noteAll(
    place,
    'places of the right options',
    runs.length > 0 ? [`three right options running stand at one letter: ${keys.join(' ')}`] : [],
  );
}
