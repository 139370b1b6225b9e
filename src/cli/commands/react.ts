import { join } from 'node:path';
import { mix, reactAnswer } from '../calculators/react.ts';
import { command, type Operand } from '../command.ts';
import { inputsOf } from '../inputs.ts';
import { readLaboratory } from '../read-laboratory.ts';
import { tellReact } from '../tell-react.ts';

const name = 'react';
const operand: Operand = {
  name: 'REACTANT',
  help: 'species (Cr2O7^2-, Zn) or substances from the shelf (KMnO4); the first is the one that is followed. Without one: lines of standard input',
  count: 'some',
};

export const react = command({
  name,
  summary: 'predict from E° what happens in a beaker, step by step, and why it stops',
  operand,
  options: ['medium', 'amount', 'excess', 'given', 'table', 'json'],
  example: {
    line: 'couplet react "Cr2O7^2-" Zn --excess Zn',
    does: 'orange to green to blue, and why no further',
  },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    const laboratory = readLaboratory(join(desk.root, 'potentials'), given.table);
    const reacted = mix(inputs, given, laboratory);
    if (given.json) return desk.print(JSON.stringify(reactAnswer(reacted), undefined, 2));
    desk.print(tellReact(reacted, laboratory.name));
  },
});
