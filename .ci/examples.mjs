// Rebuilds the committed examples and their pictures, byte for byte, or into another folder given as argument.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = process.argv[2] ?? 'out/examples';

/** Invented classes. Each line is what a teacher would type after `couplet sheet`. */
const EXAMPLES = [
  ['--seed', 'harrowmoor starter', '--name', 'starter', '--questions', '3', '--support', 'prompts', '--title', 'Starter (invented class)'],
  ['--seed', 'harrowmoor homework', '--name', 'homework', '--marks', '30', '--title', 'Homework (invented class)'],
  ['--seed', 'harrowmoor stretch', '--name', 'stretch', '--questions', '4', '--level', 'stretch', '--title', 'Stretch (invented class)'],
];

function run(...args) {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}

for (const example of EXAMPLES) run('src/cli/couplet.mjs', 'sheet', ...example, '--out', out, '--replace');
run('.ci/build.mjs', 'pictures');
run('.build/pictures.js', out);
