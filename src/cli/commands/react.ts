import { join } from 'node:path';
import { command, type Operand } from '../command.ts';
import { inputsOf } from '../inputs.ts';

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
    const [{ mix, reactAnswer }, { readLaboratory }] = await Promise.all([
      import('../calculators/react.ts'),
      import('../read-laboratory.ts'),
    ]);
    const laboratory = readLaboratory(join(desk.root, 'potentials'), given.table);
    const reacted = mix(
      inputs.map(({ text }) => text),
      given,
      laboratory,
    );
    if (given.json) return desk.print(JSON.stringify(reactAnswer(reacted), undefined, 2));
    const { tellReact } = await import('../tell-react.ts');
    desk.print(tellReact(reacted, laboratory.name));
  },
});
