import { electronsAnswer as answer, electrons as work } from '../calculators/electrons.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellElectrons as tell } from '../tell-electrons.ts';

const name = 'electrons';
const operand: Operand = {
  name: 'ATOM',
  help: 'an atom, an ion of one atom, or a complex. Without one: lines of standard input',
  count: 'some',
};

export const electrons = command({
  name,
  summary: 'give electron configurations, and whether the element is a transition element',
  operand,
  options: ['json'],
  example: { line: 'couplet electrons "Cr^3+"', does: '[Ar] 3d3, 3 unpaired' },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    printAnswers(answersTo(inputs, work), given.json, desk, { answer, tell });
  },
});
