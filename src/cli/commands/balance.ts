import { balanceAnswer as answer, balance as work } from '../calculators/balance.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { printAnswers } from '../print-answers.ts';
import { tellBalance as tell } from '../tell-balance.ts';

const name = 'balance';
const operand: Operand = {
  name: 'EQUATION',
  help: 'whole or ionic, with or without water, H^+ and OH^-; or a couple. Without one: lines of standard input',
  count: 'some',
};

export const balance = command({
  name,
  summary: 'balance equations and half-equations, and say what is oxidised and reduced',
  operand,
  options: ['solvent', 'couple', 'json'],
  example: {
    line: 'couplet balance "MnO4^- + Fe^2+ -> Mn^2+ + Fe^3+"',
    does: 'MnO4^- + 5Fe^2+ + 8H^+ -> Mn^2+ + 5Fe^3+ + 4H2O',
  },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    const found = answersTo(inputs, (text) => work(text, given.solvent, given.couple));
    printAnswers(found, given.json, desk, { answer, tell });
  },
});
