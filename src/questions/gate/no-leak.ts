import type { Item } from '../question.ts';
import { equationKey, sameValue } from '../same-value.ts';
import { showNumber } from '../show-value.ts';
import type { Value } from '../value.ts';
import { inlinesIn, inlinesOfSpace, plainText } from './inlines-of.ts';
import type { GateRule } from './rule.ts';

/** No answer stands in what a pupil reads before writing it: not a figure of three digits, an equation, or a colour that is asked. */
export const noLeak: GateRule = {
  id: 'no-leak',
  holds: 'no answer is printed in a stem, a prompt, a hint or an answer space',
  check: ({ item, tables, values }) => {
    const printed = visibleInlines(item);
    const text = plainText(printed);
    const equations = new Set(printed.flatMap((inline) => (inline.kind === 'equation' ? [equationKey(inline.equation)] : [])));
    const shown = new Set(item.parts.flatMap(({ restart }) => (restart ? [restart.step] : [])));
    const answers = item.parts.flatMap((part) => (part.options ? [] : part.answers)).filter((id) => !shown.has(id));
    return [
      ...answers.flatMap((id) => {
        const step = item.steps.find((each) => each.id === id)!;
        const value = values.get(id)!;
        const isDatum = item.data.some((datum) => sameValue(datum.value, value, step.printed));
        return !isDatum && standsIn(value, step.printed, text, equations)
          ? [`the answer to \`${id}\` can be read on the sheet`]
          : [];
      }),
      ...coloursAsked(item).flatMap((key) => {
        const word = tables.speciesOf(key).colour?.word;
        return word && new RegExp(`\\b${word}\\b`, 'i').test(text)
          ? [`the colour of ${key}, which is asked, can be read on the sheet`]
          : [];
      }),
    ];
  },
};

function visibleInlines(item: Item) {
  return [
    ...inlinesIn(item.stem),
    ...item.parts.flatMap((part) => [...part.prompt, ...part.hints.flat(), ...inlinesOfSpace(part.space)]),
  ];
}

function standsIn(value: Value, rule: Parameters<typeof showNumber>[1], text: string, equations: ReadonlySet<string>): boolean {
  if (value.kind === 'list') return false;
  if (value.kind === 'equation') return equations.has(equationKey(value.equation));
  if (value.kind !== 'number') return false;
  const digits = showNumber(value.value, rule).replace(/^[+\u2212]/, '');
  return (
    digits.replaceAll(/\D/g, '').length >= 3 && new RegExp(`(?<![\\d.])${digits.replaceAll(/[.^]/g, '\\$&')}(?![\\d])`).test(text)
  );
}

function coloursAsked(item: Item): string[] {
  return item.asks.flatMap((fact) => (fact.startsWith('colour:') ? [fact.slice('colour:'.length)] : []));
}
