import type { Inline } from '../document/inline.ts';
import { text } from '../document/inlines.ts';
import { acceptedRange } from './accepted-range.ts';
import { couldBeChosen } from './could-be-chosen.ts';
import { valuePoint } from './point.ts';
import type { ChoiceOption, Item, Objective, Part, Row, Step } from './question.ts';
import { rowsOf } from './rows.ts';
import { sameValue } from './same-value.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';
import type { NodeId } from './value.ts';

/** How a written item is asked as one multiple-choice part. */
export interface ChoiceAsk {
  /** the step whose value is chosen */
  readonly step: NodeId;
  /** a direct question, ending in a question mark, answerable with the options covered */
  readonly prompt: readonly Inline[];
  /** options at the most: three for numbers, four where four ideas exist */
  readonly most: 3 | 4;
  readonly objective: Objective;
  readonly maths: 0 | 1;
  readonly practical: 0 | 1;
}

/**
 * Turns a written item into one choice: the steps that lead to the asked one, the slips along them, and the answers those slips give as
 * wrong options. Data that only other steps need stay on the page as data to be passed over.
 * @returns undefined when fewer than two wrong options can be told apart: the draw is no good as a choice
 */
export function asChoice(item: Item, ask: ChoiceAsk): Item | undefined {
  const leading = stepsTo(item, ask.step);
  const steps = item.steps.filter(({ id }) => leading.has(id)).map((step): Step => ({ ...step, part: 'a' }));
  const slips = item.slips.filter(({ at }) => leading.has(at));
  const needed = new Set(steps.flatMap(({ needs }) => needs));
  const data = item.data.map((datum) => (needed.has(datum.id) ? datum : { ...datum, decoy: true as const }));
  const bare = partOf(ask);
  const whole: Item = { ...item, data, steps, slips, parts: [bare] };
  const pool = wrongOptions(whole, ask.step);
  if (pool.length < 2) return undefined;
  const step = steps.find(({ id }) => id === ask.step)!;
  const right = solve(whole).get(ask.step)!;
  const key: ChoiceOption = { value: right, content: showValue(right, step.printed, ask.step), aliases: [], feedback: '' };
  // A slip whose answer can be no option is nothing that this question shows.
  const shown = slips.filter((slip) => pool.some((option) => option.slip === slip.id || option.aliases.includes(slip.id)));
  return { ...whole, slips: shown, parts: [arranged({ ...bare, choice: { key, pool, most: ask.most } })] };
}

function partOf({ step, prompt, objective, maths, practical }: ChoiceAsk): Part {
  return {
    id: 'a',
    command: 'Give',
    objective,
    maths,
    practical,
    prompt,
    hints: [],
    space: { kind: 'none' },
    points: [valuePoint({ step, earns: [text('the right option alone')] })],
    answers: [step],
  };
}

/** A step and every step that it depends on. */
function stepsTo(item: Item, id: NodeId): Set<NodeId> {
  const byId = new Map(item.steps.map((step) => [step.id, step]));
  const found = new Set<NodeId>();
  const visit = (each: NodeId) => {
    const step = byId.get(each);
    if (!step || found.has(each)) return;
    found.add(each);
    step.needs.forEach(visit);
  };
  visit(id);
  return found;
}

/** One option for each row that changes the answer, in the family's order; none that a marker would accept, or that nobody would choose. */
function wrongOptions(item: Item, id: NodeId): ChoiceOption[] {
  const right = solve(item).get(id)!;
  const step = item.steps.find((each) => each.id === id)!;
  const range = step.printed === 'exact' ? undefined : acceptedRange(item, id);
  const taken: ChoiceOption[] = [];
  for (const row of rowsOf(item)) {
    const seen = row.seen.get('a')?.find((each) => each.step === id);
    if (
      !seen ||
      !couldBeChosen(seen.value, right, step.printed) ||
      taken.some(({ value }) => sameValue(value, seen.value, step.printed))
    )
      continue;
    const inRange =
      range &&
      seen.value.kind === 'number' &&
      seen.value.value.compare(range.least) >= 0 &&
      seen.value.value.compare(range.most) <= 0;
    if (!inRange) taken.push(optionOf(row, seen));
  }
  return taken;
}

function optionOf(
  { slip, aliases, feedback }: Row,
  seen: { readonly value: ChoiceOption['value']; readonly content: readonly Inline[] },
): ChoiceOption {
  return { value: seen.value, content: seen.content, slip, aliases, feedback };
}

/** Places the key can have: numbers stand in ascending order, so it depends on how many wrong ones lie below and above. */
export function keyPlaces(part: Part): number[] {
  const choice = part.choice;
  if (!choice) return [];
  const wrong = Math.min(choice.pool.length, choice.most - 1);
  const places = Array.from({ length: wrong + 1 }, (_, at) => at);
  if (choice.key.value.kind !== 'number') return places;
  const below = choice.pool.filter(({ value }) => isBelow(value, choice.key.value)).length;
  return places.filter((place) => place <= below && wrong - place <= choice.pool.length - below);
}

/**
 * The part with its key at a place, by choosing which wrong options stand below and above it; without a place, the family's first
 * wrong options are taken.
 */
export function arranged(part: Part, place?: number): Part {
  const { choice } = part;
  if (!choice) return part;
  const wrong = Math.min(choice.pool.length, choice.most - 1);
  if (choice.key.value.kind === 'number') {
    const below = choice.pool.filter(({ value }) => isBelow(value, choice.key.value));
    const above = choice.pool.filter(({ value }) => !isBelow(value, choice.key.value));
    const taken =
      place === undefined ? choice.pool.slice(0, wrong) : [...below.slice(0, place), ...above.slice(0, wrong - place)];
    return { ...part, options: [choice.key, ...taken].sort((a, b) => (isBelow(a.value, b.value) ? -1 : 1)) };
  }
  const others = choice.pool.slice(0, wrong);
  const at = place ?? 0;
  return { ...part, options: [...others.slice(0, at), choice.key, ...others.slice(at)] };
}

function isBelow(one: ChoiceOption['value'], other: ChoiceOption['value']): boolean {
  return one.kind === 'number' && other.kind === 'number' && one.value.compare(other.value) < 0;
}
