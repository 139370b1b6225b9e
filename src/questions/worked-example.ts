import type { Block, WorkingLine } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { strong, text } from '../document/inlines.ts';
import type { Part, Question, Step } from './question.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';
import type { NodeId, Value, Values } from './value.ts';
import { withoutEcho } from './without-echo.ts';

/** A part worked, each step under the principle it uses; it has a letter when it is not alone. */
export interface WorkedPart {
  readonly part: Part;
  readonly letter?: string;
  readonly blocks: readonly Block[];
}

/**
 * Every part worked: the example that stands before a question, or a solution. A principle stays with its line and is said once in a part.
 * @param upTo only as far as this step, which is what a choice asks
 */
export function workedParts(question: Question, upTo?: NodeId): WorkedPart[] {
  const values = solve(question, 'printed');
  const led = upTo === undefined ? undefined : stepsTo(question, upTo);
  const parts = question.parts.map((part, at) => {
    const steps = question.steps.filter((step) => step.part === part.id && (step.line || part.answers.includes(step.id)));
    return { part, letter: 'abcdefghijklmnop'[at]!, steps: led ? steps.filter(({ id }) => led.has(id)) : steps };
  });
  const told = parts.filter(({ steps }) => steps.length > 0);
  return told.map(({ part, letter, steps }) => {
    const blocks = underPrinciples(part, steps, values);
    return told.length > 1 ? { part, letter, blocks } : { part, blocks };
  });
}

/** The parts one below the other, each behind what it asks. */
export function workedExample(question: Question, upTo?: NodeId): Block[] {
  return workedParts(question, upTo).flatMap(({ part, letter, blocks }): Block[] => {
    const lead = letter === undefined ? [] : [strong(`${letter}\u2002`)];
    return [{ kind: 'paragraph', content: [...lead, ...part.prompt], keeps: true }, ...blocks];
  });
}

/** A step and every step that it depends on. */
function stepsTo({ steps }: Question, id: NodeId): Set<NodeId> {
  const found = new Set([id]);
  for (const step of steps.toReversed()) if (found.has(step.id)) for (const need of step.needs) found.add(need);
  return found;
}

/** Lines one after the other under one principle are one working, their equals signs under one another. */
function underPrinciples(part: Part, steps: readonly Step[], values: Values): Block[] {
  const said = new Set<string>();
  const blocks: Block[] = [];
  for (const step of steps) {
    const isNew = !said.has(step.principle);
    said.add(step.principle);
    if (isNew) blocks.push({ kind: 'paragraph', weight: 'light', content: [text(sentence(step.principle))], keeps: true });
    const line = step.line && withoutEcho(step.line(values));
    const last = blocks.at(-1);
    if (line && last?.kind === 'working') blocks[blocks.length - 1] = { kind: 'working', lines: [...last.lines, line] };
    else blocks.push(line ? workingOf(line) : { kind: 'display', content: plainAnswer(part, step, values.get(step.id)!) });
  }
  return blocks;
}

const workingOf = (line: WorkingLine): Block => ({ kind: 'working', lines: [line] });

/** An answer that no line ends in: behind its label where it has one, words as a sentence. */
function plainAnswer({ space, answers }: Part, { id, printed }: Step, value: Value): Inline[] {
  const shown = showValue(value, printed);
  const label = space.kind === 'short' && space.labels.length === answers.length ? space.labels[answers.indexOf(id)] : undefined;
  if (label) return [...label, text(endsInSign(label) ? ' ' : ': '), ...shown];
  return value.kind === 'words' ? asSentence(shown) : shown;
}

function endsInSign(label: readonly Inline[]): boolean {
  const last = label.at(-1);
  return last?.kind === 'text' && /[=:]\s*$/.test(last.text);
}

/** Words begin with a capital and end in a stop; a reason stands as a sentence of its own. */
function asSentence(content: readonly Inline[]): Inline[] {
  const [first, ...rest] = content;
  if (first?.kind !== 'text') return [...content, text('.')];
  const words = first.text.replace(/^because /, '');
  const whole = [text(capital(words)), ...rest];
  const last = whole.at(-1)!;
  return last.kind === 'text' && /[.?!]$/.test(last.text) ? whole : [...whole, text('.')];
}

function sentence(words: string): string {
  return `${capital(words)}.`;
}

function capital(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}
