import type { Question } from '../questions/question.ts';

/** Why two questions cannot stand in one paper: one tells what the other asks, or they are the same exercise or ask one equation. */
export function conflictBetween(one: Question, other: Question): string | undefined {
  if (one.family === other.family && one.identity === other.identity) return `the same exercise twice: ${one.identity}`;
  const told = one.gives.find((fact) => other.asks.includes(fact)) ?? other.gives.find((fact) => one.asks.includes(fact));
  if (told) return `one question tells what another asks: ${told}`;
  // An equation asked for twice stands among the options of a choice, or on a completion copy, of one of the two.
  const twice = one.asks.find((fact) => /^(?:eq|half):/.test(fact) && other.asks.includes(fact));
  return twice && `two questions ask the same: ${twice}`;
}
