import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { chemistry } from './chemistry.ts';
import { startUp } from './start-up.ts';
import { warm } from './warm.ts';
import { wholeProcess } from './whole-process.ts';

/** Run by `npm run bench`; bundled into `.build/`, hence one folder below the package. Figures are medians; nothing here can fail a test. */
const root = fileURLToPath(new URL('..', import.meta.url));

process.stdout.write(`Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}\n\nWhole processes\n`);
process.stdout.write(`${wholeProcess(root).join('\n')}\n\nCalculators as whole processes\n`);
process.stdout.write(`${startUp(root).join('\n')}\n\nOne process, warm\n`);
process.stdout.write(`${[...warm(root), ...chemistry(root)].join('\n')}\n`);
