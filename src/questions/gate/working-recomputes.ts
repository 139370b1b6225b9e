import type { Inline } from '../../document/inline.ts';
import { decimalAt } from '../../exact/decimal.ts';
import { sameValue } from '../same-value.ts';
import { roundValue, solve } from '../solve.ts';
import { computeText, printedPlaces } from './compute-text.ts';
import type { GateRule } from './rule.ts';

/**
 * The worked answer is read as printed and computed again: every line must give the figure at its end, from figures printed before it.
 * Carried in full and carried as printed, the chain must end in the same answers.
 */
export const workingRecomputes: GateRule = {
  id: 'working-recomputes',
  holds: 'every line of working gives its figure from the figures printed, and rounding on the way does not change an answer',
  check: ({ item, values }) => {
    const asPrinted = solve(item, 'printed');
    const lines = item.steps.flatMap((step) => {
      const line = step.line?.(asPrinted);
      return line && step.printed !== 'exact' ? lineProblems(step.id, line.right) : [];
    });
    const drifted = item.parts
      .flatMap(({ answers }) => answers)
      .flatMap((id) => {
        const step = item.steps.find((each) => each.id === id)!;
        const same = sameValue(roundValue(values.get(id)!, step.printed), asPrinted.get(id)!, step.printed);
        return same ? [] : [`\`${id}\` ends differently when intermediates are rounded as printed`];
      });
    return [...lines, ...drifted];
  },
};

function lineProblems(id: string, right: readonly Inline[]): string[] {
  const text = lineText(right);
  const equals = text.lastIndexOf('=');
  if (equals < 0) return [`the line of \`${id}\` has no equals sign`];
  const [sum, result] = [text.slice(0, equals), text.slice(equals + 1).trim()];
  const computed = computeText(sum);
  const printed = computeText(result);
  if (!computed || !printed) return [`the line of \`${id}\` cannot be read: ${text}`];
  return decimalAt(computed, printedPlaces(result)).value.equals(printed)
    ? []
    : [`\`${id}\`: ${sum.trim()} does not give ${result}`];
}

/** A line as one-line text: fractions with a slash and brackets, units left out. */
function lineText(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) => {
      if (inline.kind === 'text') return inline.text;
      if (inline.kind === 'quantity') return inline.number;
      if (inline.kind === 'fraction') return `((${lineText(inline.above)})/(${lineText(inline.below)}))`;
      return '';
    })
    .join('');
}
