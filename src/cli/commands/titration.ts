import { join } from 'node:path';
import { readMassesOnly } from '../../potentials/read-one-file.ts';
import { publishedMasses } from '../calculators/mass.ts';
import { titrationAnswer, titration as work } from '../calculators/titration.ts';
import { command, type Operand } from '../command.ts';
import { inputsOf } from '../inputs.ts';
import { readLaboratory } from '../read-laboratory.ts';
import { tellTitration } from '../tell-titration.ts';

const name = 'titration';
const operand: Operand = {
  name: 'NAME=VALUE',
  help:
    'species titrant, analyte (or the ratio, analyte for one of titrant); titrant-concentration and analyte-concentration in mol dm^-3; ' +
    'titre (or titres, between commas), aliquot, flask, taken in cm^3; sample in g; sought (a formula), or molar-mass in g mol^-1 and ' +
    'per-analyte (how many of what is sought stand for one analyte). Without one: lines of standard input',
  count: 'some',
};

export const titration = command({
  name,
  summary: 'work a titration out, forwards to a concentration, mass or percentage, or back to the titre',
  operand,
  options: ['medium', 'table', 'json'],
  example: {
    line: 'couplet titration titrant=MnO4^- analyte=Fe^2+ titrant-concentration=0.0200 titre=23.40 aliquot=25.0',
    does: 'c(Fe^2+) = 0.0936 mol dm^-3, line by line',
  },
  run: async (given, operands, desk) => {
    const inputs = await inputsOf({ name, operand }, operands, desk);
    const folder = join(desk.root, 'potentials');
    let table: string | undefined;
    const shelf = () => {
      const laboratory = readLaboratory(folder, given.table);
      table = laboratory.name;
      return laboratory;
    };
    const masses = () => publishedMasses(readMassesOnly(folder));
    const worked = work(
      inputs.map(({ text }) => text),
      given.medium,
      { shelf, masses },
    );
    if (given.json) return desk.print(JSON.stringify(titrationAnswer(worked), undefined, 2));
    desk.print(tellTitration(worked, table));
  },
});
