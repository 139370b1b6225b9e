import { nameAnswer as answer, name as work } from '../calculators/name.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellName as tell } from '../tell-name.ts';

const name = 'name';
const operand: Operand = {
  name: 'FORMULA',
  help: 'of an ion, salt or complex. Without one: lines of standard input',
  count: 'some',
};

export const nameOfSpecies = command({
  name,
  summary: 'name ions, salts and complexes (IUPAC 2005), and describe the complexes',
  operand,
  options: ['json'],
  example: { line: 'couplet name "[Co(NH3)6]Cl3"', does: 'hexaamminecobalt(III) chloride' },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    printAnswers(answersTo(inputs, work), given.json, desk, { answer, tell });
  },
});
