import { join } from 'node:path';
import { readSpeciesOnly } from '../../potentials/read-one-file.ts';
import { colourAnswer as answer, colour as work } from '../calculators/colour.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellColour as tell } from '../tell-colour.ts';

const name = 'colour';
const operand: Operand = {
  name: 'SPECIES',
  help: 'such as V^3+, MnO2 or [CoCl4]^2-. Without one: lines of standard input',
  count: 'some',
};

export const colour = command({
  name,
  summary: 'give colours, other words that are accepted, and the source',
  operand,
  options: ['json'],
  example: { line: 'couplet colour "V^3+"', does: 'green in dilute solution' },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    const species = readSpeciesOnly(join(desk.root, 'potentials'));
    const found = answersTo(inputs, (text) => work(text, species));
    printAnswers(found, given.json, desk, { answer, tell });
  },
});
