import type { Block } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { strong, text } from '../document/inlines.ts';
import type { MisconceptionId, Part, PartId, Point, PointId, Question, Step, Support } from './question.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';
import type { NodeId, Values } from './value.ts';

/** How one part is printed under a support. */
export interface PresentedPart {
  readonly part: Part;
  /** hints under the prompt */
  readonly hints: readonly (readonly Inline[])[];
  /** steps that are printed for the pupil, some with gaps to fill */
  readonly printed: readonly Block[];
  /** points whose step is printed, so that they are not the pupil's to earn */
  readonly given: ReadonlySet<PointId>;
  /** steps that stand on the page, given or as a frame to fill */
  readonly shown: ReadonlySet<NodeId>;
  /** false when nothing is left to write but what the frames hold */
  readonly asks: boolean;
}

/**
 * A finished question under a support. `open` prints it as it is and `prompts` adds hints; `completion` prints the steps that do not
 * depend on the blank one, leaves a gap for the blank step and frames for the steps that follow from it, and leaves the last part whole; `worked` leaves the question as it is,
 * because its example stands before it. Solving is over before this: the answers are the same under every support.
 * @param on the misconception whose step is left blank; the family's most common one when absent or not in this question
 * @param answered the gaps of frames hold what belongs into them, for a teacher copy
 */
export function present(question: Question, support: Support, on?: MisconceptionId, answered = false): PresentedPart[] {
  if (support !== 'completion' || question.parts.some(({ options }) => options)) {
    return question.parts.map((part) => ({
      part,
      hints: support === 'prompts' ? part.hints : [],
      printed: [],
      given: new Set(),
      shown: new Set(),
      asks: true,
    }));
  }
  const blank = blankStep(question, on);
  const after = dependents(question.steps, blank);
  const last = question.parts.at(-1)!.id;
  const values = solve(question, 'printed');
  return question.parts.map((part) => completed(question, part, { blank, after, last, values, answered }));
}

interface Fading {
  readonly blank: NodeId;
  readonly after: ReadonlySet<NodeId>;
  /** the part that the pupil does alone, whatever is given before */
  readonly last: PartId;
  readonly values: Values;
  readonly answered: boolean;
}

/** The step to leave blank: where the misconception shows itself. The first slip of a question is its family's most common one. */
export function blankStep(question: Question, on?: MisconceptionId): NodeId {
  const slips = question.slips.filter(({ applies }) => applies(solve(question)));
  const chosen = slips.find(({ id }) => id === on) ?? slips[0];
  return chosen?.at ?? question.steps.at(-1)!.id;
}

/** Every step that depends on one, itself left out. */
function dependents(steps: readonly Step[], id: NodeId): Set<NodeId> {
  const found = new Set([id]);
  for (const step of steps) if (step.needs.some((need) => found.has(need))) found.add(step.id);
  found.delete(id);
  return found;
}

function completed(question: Question, part: Part, fading: Fading): PresentedPart {
  const { blank, after, last } = fading;
  const steps = question.steps.filter((step) => step.part === part.id);
  const isGiven = ({ id }: Step) => id !== blank && !after.has(id) && part.id !== last;
  const frames = part.id === last && !steps.some(({ id }) => id === blank || after.has(id)) ? [] : steps;
  const printed = frames.flatMap((step) => printedStep(step, isGiven(step), part, fading));
  // A frame that ends in the answer is the place to write it: no box beside it.
  const shown = new Set(frames.flatMap((step) => (isGiven(step) || step.line ? [step.id] : [])));
  const open = part.answers.filter((id) => !shown.has(id));
  const told = open.length > 0 ? toldBy(part, steps.filter(isGiven)) : steps.filter(isGiven);
  const given = new Set(part.points.filter(({ step }) => told.some(({ id }) => id === step)).map(({ id }) => id));
  return { part, hints: [], printed, given, shown, asks: open.length > 0 };
}

/** Given steps that can be read on the page: printed themselves, or part of what a printed one rests on. */
function toldBy(part: Part, given: readonly Step[]): Step[] {
  const told = new Set<NodeId>();
  for (const step of given.toReversed()) {
    if (step.line || part.answers.includes(step.id) || told.has(step.id)) for (const id of [step.id, ...step.needs]) told.add(id);
  }
  return given.filter(({ id }) => told.has(id));
}

/** A given step in full; a step of arithmetic that is not given as a frame with gaps; nothing for words still to be found. */
function printedStep(step: Step, isGiven: boolean, part: Part, { values, answered }: Fading): Block[] {
  const line = step.line?.(values);
  if (line) return [{ kind: 'working', lines: [isGiven ? line : { left: line.left, right: framed(line.right, answered) }] }];
  if (!isGiven || !part.answers.includes(step.id)) return [];
  return [{ kind: 'paragraph', weight: 'light', content: showValue(values.get(step.id)!, step.printed, step.id) }];
}

/** Gaps for the arithmetic and for its result, the unit left standing; what belongs into them when they are to be answered. */
function framed(right: readonly Inline[], answered: boolean): Inline[] {
  const result = right.at(-1);
  const unit: Inline[] =
    result?.kind === 'quantity' && result.unit !== ''
      ? [text('\u00a0'), { kind: 'quantity', number: '', unit: result.unit }]
      : [];
  const bare = result?.kind === 'quantity' ? { ...result, unit: '' } : result;
  const filled = answered && bare ? { way: { filled: wayTo(right) }, end: { filled: [bare] } } : { way: {}, end: {} };
  return [{ kind: 'gap', width: 9, ...filled.way }, text(' = '), { kind: 'gap', width: 5, ...filled.end }, ...unit];
}

/** A line of arithmetic without its result and the equals sign before it. */
function wayTo(right: readonly Inline[]): Inline[] {
  const way = right.slice(0, -1);
  const last = way.at(-1);
  return last?.kind === 'text' ? [...way.slice(0, -1), { ...last, text: last.text.replace(/\s*=\s*$/, '') }] : way;
}

/** Marks a pupil can earn under a support. */
export function presentedMarks(parts: readonly PresentedPart[]): number {
  return parts.reduce((sum, { part, given }) => sum + part.points.length - given.size, 0);
}

/** Parts and points that a support prints, for the scheme's columns. */
export function givenPoints(parts: readonly PresentedPart[]): Map<PartId, Point[]> {
  return new Map(parts.map(({ part, given }) => [part.id, part.points.filter(({ id }) => given.has(id))]));
}

/**
 * The whole answer, worked, each step under the principle it uses: the example that stands before a question, or a solution, which shows
 * also what explains it.
 */
export function workedExample(question: Question, as: 'example' | 'solution' = 'example'): Block[] {
  const values = solve(question, 'printed');
  return question.parts.flatMap((part, at): Block[] => {
    const letter = as === 'solution' && question.parts.length > 1 ? [strong(`${'abcdefghijklmnop'[at]}\u2002`)] : [];
    const steps = question.steps.filter((step) => step.part === part.id && (step.line || part.answers.includes(step.id)));
    return [
      { kind: 'paragraph', content: [...letter, ...part.prompt] },
      ...steps.flatMap((step): Block[] => [
        { kind: 'paragraph', weight: 'light', content: [text(sentence(step.principle))] },
        exampleLine(step, values),
      ]),
      ...(as === 'solution' ? (part.explains ?? []) : []),
    ];
  });
}

function exampleLine(step: Step, values: Values): Block {
  const line = step.line?.(values);
  return line ? { kind: 'working', lines: [line] } : { kind: 'display', content: showValue(values.get(step.id)!, step.printed) };
}

function sentence(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}.`;
}
