#!/usr/bin/env node
// The run bit of this file is kept by git; compiled code would lose it, and `npx couplet` with it.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const compiled = new URL('../../.build/main.js', import.meta.url);

if (Number(process.versions.node.split('.')[0]) < 20) {
  process.stderr.write(`couplet: expected Node 20 or later, found ${process.versions.node}\n`);
  process.exitCode = 2;
} else if (existsSync(compiled)) {
  const { main } = await import(compiled.href);
  await main(process.argv.slice(2), root);
} else {
  process.stderr.write(`couplet: expected the compiled program, found none; run \`npm run build\` in ${root}\n`);
  process.exitCode = 2;
}
