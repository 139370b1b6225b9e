import type { Inline } from '../../src/document/inline.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import type { Question } from '../../src/questions/question.ts';

export const COLOURS = /\b(purple|violet|pink|yellow|green|blue|orange|brown|red|colourless|colou?r)\b/i;

/** What earns marks, and what is asked, in words. */
export function saidIn({ parts }: Pick<Question, 'parts'>): string {
  const runs = parts.flatMap(({ prompt, hints, points }): (readonly Inline[])[] => [
    prompt,
    ...hints,
    ...points.flatMap(({ accept }) => accept),
  ]);
  return runs.map(plainText).join('\n');
}
