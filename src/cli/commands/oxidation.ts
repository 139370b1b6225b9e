import { oxidationAnswer as answer, oxidation as work } from '../calculators/oxidation.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellOxidation as tell } from '../tell-oxidation.ts';

const name = 'oxidation';
const operand: Operand = {
  name: 'FORMULA',
  help: 'of an element, ion, salt or complex. Without one: lines of standard input',
  count: 'some',
};

export const oxidation = command({
  name,
  summary: 'give oxidation numbers, and the rules they follow from',
  operand,
  options: ['json'],
  example: { line: 'couplet oxidation K2Cr2O7', does: 'K +1, Cr +6, O −2, rule by rule' },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    printAnswers(answersTo(inputs, work), given.json, desk, { answer, tell });
  },
});
