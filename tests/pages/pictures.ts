import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { rasterise } from './rasterise.ts';

/** Run by `npm run examples`: the first pages of the homework example as pictures for README. Its argument is the folder of the examples. */
const [folder = 'out/examples'] = process.argv.slice(2);
const DPI = 110;

mkdirSync(join(folder, 'pictures'), { recursive: true });
for (const name of ['questions', 'mark-scheme']) {
  const [page] = await rasterise(readFileSync(join(folder, 'homework', `${name}.pdf`)), DPI, [1]);
  writeFileSync(join(folder, 'pictures', `${name}.png`), page!.png());
}
