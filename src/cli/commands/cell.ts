import { join } from 'node:path';
import { Fault } from '../../exact/fault.ts';
import { readCouplesOnly } from '../../potentials/read-couples-only.ts';
import { readSpeciesOnly } from '../../potentials/read-one-file.ts';
import { cellAnswer, workCell } from '../calculators/cell.ts';
import { halfCellOf, speciesNamed } from '../calculators/half-cell.ts';
import { command, type Operand } from '../command.ts';
import { answersTo, inputsOf } from '../inputs.ts';
import { tellCell } from '../tell-cell.ts';

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
    const folder = join(desk.root, 'potentials');
    const table = readCouplesOnly(folder, given.table, answersTo(inputs, speciesNamed));
    const halfCells = {
      couples: table.couples,
      all: () => readCouplesOnly(folder, given.table).couples,
      species: () => readSpeciesOnly(folder),
    };
    const [first, second] = answersTo(inputs, (text) => halfCellOf(text, halfCells));
    const worked = workCell(first!, second!, given);
    if (given.json) return desk.print(JSON.stringify(cellAnswer(worked), undefined, 2));
    desk.print(tellCell(worked, table.name));
  },
});
