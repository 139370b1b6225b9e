import type { QuestionBlock } from '../../src/document/block.ts';
import { axesFigure } from '../../src/document/figures/axes-figure.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { say } from './say.ts';

const x = { label: say('{c(Cu^2+)} / mol dm⁻³'), scale: { start: parseDecimal('0'), step: parseDecimal('0.02') } };
const y = { label: say('absorbance'), scale: { start: parseDecimal('0'), step: parseDecimal('0.1') } };
const points = [
  ['0.02', '0.08'],
  ['0.06', '0.24'],
].map(([across, up]) => [Rational.parse(across!), Rational.parse(up!)] as const);

/** A question with a graph to read and a squared grid to plot on. The setting is invented. */
export const PLOT_QUESTION: QuestionBlock = {
  kind: 'question',
  number: 5,
  code: 'T8CWN4QZ',
  marks: 2,
  stem: [
    { kind: 'paragraph', content: say('A colorimeter is calibrated with solutions of copper(II) sulfate.') },
    { kind: 'figure', figure: axesFigure({ ...x, squares: 6 }, { ...y, squares: 4 }, { points }) },
  ],
  parts: [
    {
      kind: 'part',
      letter: 'a',
      marks: 1,
      blocks: [
        { kind: 'paragraph', content: say('Draw the calibration line, with the point for {q 0.10 mol dm^-3}, absorbance 0.40.') },
        { kind: 'answer', space: { kind: 'grid', across: 6, down: 5, axes: { x, y } } },
      ],
    },
    {
      kind: 'part',
      letter: 'b',
      marks: 1,
      blocks: [
        { kind: 'paragraph', content: say('Sketch the line that a green filter would give.') },
        { kind: 'answer', space: { kind: 'grid', across: 6, down: 3 } },
      ],
    },
  ],
};
