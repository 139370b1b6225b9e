import { join } from 'node:path';
import { Fault } from '../../exact/fault.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';

const name = 'cell';
const operand: Operand = {
  name: 'NEGATIVE POSITIVE',
  help:
    'half-cells, by couple (Cu^2+/Cu), with a value ("Ag^+/Ag=0.7996"), or as a half-equation; the more positive one is put right ' +
    'unless --as-written is given. Without them: two lines of standard input',
  count: 'at most two',
};

export const cell = command({
  name,
  summary: 'work out a cell: e.m.f., equation, representation, ΔG°, K, and the Nernst equation',
  operand,
  options: ['as-written', 'with', 'temperature', 'table', 'json'],
  example: {
    line: 'couplet cell "Zn^2+/Zn" "Cu^2+/Cu" --with "Cu^2+=0.025"',
    does: 'E°cell = +1.099 V, and E at that concentration',
  },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    if (inputs.length !== 2) throw new Fault('two-half-cells', `expected two half-cells, found ${inputs.length}`);
    const [{ halfCellOf }, { cellAnswer, workCell }, { readCouplesOnly }, { readSpeciesOnly }] = await Promise.all([
      import('../calculators/half-cell.ts'),
      import('../calculators/cell.ts'),
      import('../../potentials/read-couples-only.ts'),
      import('../../potentials/read-one-file.ts'),
    ]);
    const folder = join(desk.root, 'potentials');
    const table = readCouplesOnly(folder, given.table);
    const [first, second] = answersTo(inputs, (text) =>
      halfCellOf(text, { couples: table.couples, species: () => readSpeciesOnly(folder) }),
    );
    const worked = workCell(first!, second!, given);
    if (given.json) return desk.print(JSON.stringify(cellAnswer(worked), undefined, 2));
    const { tellCell } = await import('../tell-cell.ts');
    desk.print(tellCell(worked, table.name));
  },
});
