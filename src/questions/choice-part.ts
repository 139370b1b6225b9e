import type { Inline } from '../document/inline.ts';
import type { Words } from '../document/words.ts';
import { valuePoint } from './point.ts';
import type { ChoiceOption, Item, Part, PartId, Row, Step } from './question.ts';
import { rowsOf } from './rows.ts';
import { sameValue } from './same-value.ts';
import { showValue } from './show-value.ts';
import { solve } from './solve.ts';

interface ChoiceSpec {
  readonly part: PartId;
  readonly step: Step;
  readonly prompt: readonly Inline[];
  readonly words: Words;
  /** options at the most: three for numbers, four where four ideas exist */
  readonly most: 3 | 4;
  readonly maths: number;
}

/**
 * A multiple-choice part: the answer and the values that slips give. Which slips are taken follows the order in which the family lists
 * them; numbers are printed in ascending order.
 * @returns a function of the item without its parts, because the options come from its rows
 */
export function drawnChoice(spec: ChoiceSpec): (item: Omit<Item, 'parts' | 'asks'>) => Part {
  const part: Part = {
    id: spec.part,
    command: 'Give',
    objective: 'application',
    maths: spec.maths,
    practical: 0,
    prompt: spec.prompt,
    hints: [],
    space: { kind: 'none' },
    points: [valuePoint({ step: spec.step.id, earns: spec.words.inline('choice-point') })],
    answers: [spec.step.id],
  };
  return (item) => {
    const whole: Item = { ...item, parts: [part], asks: [] };
    const right = solve(whole).get(spec.step.id)!;
    const key: ChoiceOption = {
      value: right,
      content: showValue(right, spec.step.printed, spec.step.id),
      aliases: [],
      feedback: '',
    };
    return { ...part, options: inOrder([key, ...wrongOptions(rowsOf(whole), spec, key)]) };
  };
}

function wrongOptions(rows: readonly Row[], { step, part, most }: ChoiceSpec, key: ChoiceOption): ChoiceOption[] {
  const taken: ChoiceOption[] = [];
  for (const row of rows) {
    const seen = row.seen.get(part)?.find((each) => each.step === step.id);
    if (!seen || [key, ...taken].some(({ value }) => sameValue(value, seen.value, step.printed))) continue;
    taken.push({ value: seen.value, content: seen.content, slip: row.slip, aliases: row.aliases, feedback: row.feedback });
    if (taken.length === most - 1) break;
  }
  return taken;
}

function inOrder(options: readonly ChoiceOption[]): ChoiceOption[] {
  return [...options].sort((a, b) =>
    a.value.kind === 'number' && b.value.kind === 'number' ? a.value.value.compare(b.value.value) : 0,
  );
}
