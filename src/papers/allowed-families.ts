import type { SpeciesKey } from '../chemistry/formula.ts';
import { parseFormula } from '../chemistry/parse-formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Fault } from '../exact/fault.ts';
import { nearMatches } from '../exact/near-matches.ts';
import { FAMILIES } from '../questions/families/index.ts';
import { type Family, TOPICS, type Topic } from '../questions/family.ts';
import type { SheetRequest } from './request.ts';

/** Families a sheet may draw from, and species it may not show. */
export interface Allowed {
  readonly families: readonly Family[];
  readonly withoutSpecies: ReadonlySet<SpeciesKey>;
}

/**
 * @throws Fault `unknown-family`, `unknown-topic`, `unknown-exclusion` with near matches; `nothing-left` when no family remains
 */
export function allowedFamilies(request: Pick<SheetRequest, 'families' | 'topics' | 'without'>): Allowed {
  for (const id of request.families) familyOf(id);
  for (const topic of request.topics) checkTopic(topic);
  const withoutSpecies = new Set<SpeciesKey>();
  const leftOut = new Set<string>();
  for (const word of request.without) {
    if (FAMILIES.some(({ id }) => id === word) || TOPICS.some((topic) => topic === word)) leftOut.add(word);
    else withoutSpecies.add(speciesKey(word));
  }
  const families = FAMILIES.filter(
    ({ id, topics }) =>
      (request.families.length === 0 || request.families.includes(id)) &&
      (request.topics.length === 0 || topics.some((topic) => request.topics.includes(topic))) &&
      !leftOut.has(id) &&
      !topics.every((topic) => leftOut.has(topic)),
  );
  if (families.length === 0)
    throw new Fault(
      'nothing-left',
      `no family fits; families and their topics are: ${FAMILIES.map(({ id, topics }) => `${id} (${topics.join(', ')})`).join('; ')}`,
    );
  return { families, withoutSpecies };
}

/** @throws Fault `unknown-family` with near matches */
export function familyOf(id: string): Family {
  const found = FAMILIES.find((family) => family.id === id);
  if (found) return found;
  throw new Fault(
    'unknown-family',
    `no family is called \`${id}\`${suggest(
      id,
      FAMILIES.map((family) => family.id),
    )}`,
  );
}

/** @throws Fault `unknown-topic` with near matches */
export function checkTopic(topic: string): asserts topic is Topic {
  if (!TOPICS.some((each) => each === topic))
    throw new Fault('unknown-topic', `no topic is called \`${topic}\`${suggest(topic, TOPICS)}`);
}

function speciesKey(word: string): SpeciesKey {
  try {
    return keyOf(parseFormula(word));
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    const known = [...TOPICS, ...FAMILIES.map(({ id }) => id)];
    throw new Fault(
      'unknown-exclusion',
      `expected a topic, a family or a species such as \`Cr2O7^2-\`, found \`${word}\`${suggest(word, known)}`,
    );
  }
}

function suggest(word: string, known: readonly string[]): string {
  const near = nearMatches(word, known);
  return near.length > 0
    ? `; did you mean ${near.map((each) => `\`${each}\``).join(' or ')}?`
    : `; there are: ${known.join(', ')}`;
}
