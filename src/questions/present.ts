import type { Block, WorkingLine } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { text } from '../document/inlines.ts';
import type { MisconceptionId, Part, PartId, Point, PointId, Question, Step, Support } from './question.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';
import type { NodeId, Values } from './value.ts';

/** How one part is printed under a support. */
export interface PresentedPart {
  readonly part: Part;
  /** hints under the prompt */
  readonly hints: readonly (readonly Inline[])[];
  /** lines that are printed for the pupil, some with gaps to fill */
  readonly lines: readonly WorkingLine[];
  /** points whose step is printed, so that they are not the pupil's to earn */
  readonly given: ReadonlySet<PointId>;
  /** false when everything the part asks is printed */
  readonly asks: boolean;
}

/**
 * A finished question under a support. `open` prints it as it is and `prompts` adds hints; `completion` prints the steps that do not
 * depend on the blank one, leaves a gap for the blank step and frames for the steps after it; `worked` leaves the question as it is,
 * because its example stands before it. Solving is over before this: the answers are the same under every support.
 * @param on the misconception whose step is left blank; the family's most common one when absent or not in this question
 */
export function present(question: Question, support: Support, on?: MisconceptionId): PresentedPart[] {
  if (support !== 'completion' || question.parts.some(({ options }) => options)) {
    return question.parts.map((part) => ({ part, hints: support === 'prompts' ? part.hints : [], lines: [], given: new Set(), asks: true }));
  }
  const blank = blankStep(question, on);
  const after = dependents(question.steps, blank);
  const values = solve(question, 'printed');
  return question.parts.map((part) => completed(question, part, { blank, after, values }));
}

interface Fading {
  readonly blank: NodeId;
  readonly after: ReadonlySet<NodeId>;
  readonly values: Values;
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
  const steps = question.steps.filter((step) => step.part === part.id);
  const isGiven = ({ id }: Step) => id !== fading.blank && !fading.after.has(id);
  const given = new Set(part.points.filter(({ step }) => steps.some((each) => each.id === step && isGiven(each))).map(({ id }) => id));
  const asks = given.size < part.points.length;
  const lines = steps.flatMap((step) => lineOf(step, isGiven(step), part, fading.values));
  return { part, hints: [], lines, given, asks };
}

/** A given step in full; a step of arithmetic that is not given as a frame with gaps; nothing for words still to be found. */
function lineOf(step: Step, isGiven: boolean, part: Part, values: Values): WorkingLine[] {
  const line = step.line?.(values);
  if (line) return [isGiven ? line : { left: line.left, right: framed(line.right) }];
  const isAnswer = part.answers.includes(step.id);
  return isGiven && isAnswer ? [{ left: [], right: showValue(values.get(step.id)!, step.printed, step.id) }] : [];
}

/** Gaps for the arithmetic and for its result, the unit left standing. */
function framed(right: readonly Inline[]): Inline[] {
  const result = right.at(-1);
  const unit: Inline[] = result?.kind === 'quantity' && result.unit !== '' ? [{ kind: 'quantity', number: '', unit: result.unit }] : [];
  return [{ kind: 'gap', width: 9 }, text(' = '), { kind: 'gap', width: 5 }, ...unit];
}

/** Marks a pupil can earn under a support. */
export function presentedMarks(parts: readonly PresentedPart[]): number {
  return parts.reduce((sum, { part, given }) => sum + part.points.length - given.size, 0);
}

/** Parts and points that a support prints, for the scheme's columns. */
export function givenPoints(parts: readonly PresentedPart[]): Map<PartId, Point[]> {
  return new Map(parts.map(({ part, given }) => [part.id, part.points.filter(({ id }) => given.has(id))]));
}

/** The whole answer, worked, each step under the principle it uses: the example that stands before a question. */
export function workedExample(question: Question): Block[] {
  const values = solve(question, 'printed');
  return question.parts.flatMap((part): Block[] => {
    const steps = question.steps.filter((step) => step.part === part.id && (step.line || part.answers.includes(step.id)));
    return [
      { kind: 'paragraph', content: part.prompt },
      ...steps.flatMap((step): Block[] => [
        { kind: 'paragraph', weight: 'light', content: [text(sentence(step.principle))] },
        { kind: 'working', lines: [step.line?.(values) ?? { left: [], right: showValue(values.get(step.id)!, step.printed) }] },
      ]),
    ];
  });
}

function sentence(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}.`;
}
