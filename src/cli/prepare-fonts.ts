import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { prepareFonts } from '../printers/pdf/fonts.ts';
import { readFace } from './read-fonts.ts';

// Run by the build: works out once what most documents need of the fonts, so that no sheet has to.
const root = fileURLToPath(new URL('..', import.meta.url));
writeFileSync(process.argv[2]!, JSON.stringify(prepareFonts((face) => readFace(root, face))));
