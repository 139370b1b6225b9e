import { join } from 'node:path';
import { readMassesOnly } from '../../potentials/read-one-file.ts';
import { massAnswer as answer, publishedMasses, mass as work } from '../calculators/mass.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellMass as tell } from '../tell-mass.ts';

const name = 'mass';
const operand: Operand = {
  name: 'FORMULA',
  help: 'with its water of crystallisation, if it has any. Without one: lines of standard input',
  count: 'some',
};

export const mass = command({
  name,
  summary: 'give molar masses, and the parts they are the sum of',
  operand,
  options: ['json'],
  example: { line: 'couplet mass "CuSO4·5H2O"', does: '249.68 g mol^-1, and what each element brings' },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    const masses = publishedMasses(readMassesOnly(join(desk.root, 'potentials')));
    const found = answersTo(inputs, (text) => work(text, masses));
    printAnswers(found, given.json, desk, { answer, tell });
  },
});
