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

/** How much of one question comes again in another, where that is allowed: what both ask, and equations that both print. */
export function repeatsOf(one: Question, other: Question): number {
  const asked = one.asks.filter((fact) => other.asks.includes(fact));
  const printed = one.gives.filter((fact) => fact.startsWith('eq:') && other.gives.includes(fact));
  return asked.length + printed.length;
}
