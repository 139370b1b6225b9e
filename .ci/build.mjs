// Bundles the program into .build/: one entry and, split off it, what only some commands load. Files that have not changed are not
// written again, and the entry is written last, so that a program that is running meanwhile finds its parts.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const esbuild = await import('esbuild').catch(() => undefined);
if (!esbuild) {
  // `npm ci --omit=dev` leaves the bundler out; installing still succeeds, and the launcher says what is missing
  process.stderr.write('couplet: expected esbuild (a development dependency) for building, found none; nothing was built\n');
  process.exit(process.env.npm_lifecycle_event === 'prepare' ? 0 : 1);
}

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, '.build');

// what only we ourselves run: `build.mjs bench`, `build.mjs audit` and so on
const extras = { bench: 'tests/bench/bench.ts', audit: 'tests/audit/run.ts', pictures: 'tests/pages/pictures.ts', others: 'tests/pages/others/run.ts' };
const extra = Object.fromEntries(Object.entries(extras).filter(([name]) => process.argv.includes(name)));

// esbuild has told what is wrong by then; its own stack would only hide that
const { outputFiles } = await esbuild
  .build({
    absWorkingDir: root,
    entryPoints: { main: 'src/cli/main.ts', prepare: 'src/cli/prepare-fonts.ts', ...extra },
    outdir: folder,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    minifySyntax: true,
    minifyWhitespace: true,
    legalComments: 'linked',
    // the rasteriser, which only pictures are made with, brings code that is not JavaScript
    external: ['@napi-rs/canvas', 'pdfjs-dist/*'],
    write: false,
    alias: {
      // yargs measures text with a package that compiles the regular expression of all emoji: 40 ms at every start, for none in our help
      'string-width': './src/cli/string-width.ts',
      'brotli/decompress.js': './.ci/absent.mjs',
      'source-map': './.ci/absent.mjs',
    },
    // packages in CommonJS ask for Node's own modules by `require`, which a module does not have
    banner: { js: "import{createRequire as requireOf}from'node:module';const require=requireOf(import.meta.url);" },
  })
  .catch(() => process.exit(1));

mkdirSync(folder, { recursive: true });
const isEntry = ({ path }) => /(main|bench|audit|pictures|others|prepare)\.js$/.test(path);
let changed = false;
for (const file of outputFiles.sort((one, other) => isEntry(one) - isEntry(other))) {
  const same = existsSync(file.path) && readFileSync(file.path).equals(Buffer.from(file.contents));
  if (same) continue;
  writeFileSync(file.path, file.contents);
  changed ||= basename(file.path) === 'prepare.js';
}

// What earlier builds left, once nobody can still be loading it.
const names = new Set(outputFiles.map(({ path }) => basename(path)));
const old = Date.now() - 600_000;
for (const name of readdirSync(folder)) {
  if (!names.has(name) && name.startsWith('chunk-') && statSync(join(folder, name)).mtimeMs < old) rmSync(join(folder, name));
}

// What documents need of the fonts, worked out again only when the code that does it or the packages have changed.
const fonts = join(folder, 'fonts.json');
const isOlder = existsSync(fonts) && statSync(fonts).mtimeMs < statSync(join(root, 'package-lock.json')).mtimeMs;
if (changed || isOlder || !existsSync(fonts)) {
  const { status } = spawnSync(process.execPath, [join(folder, 'prepare.js'), fonts], { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}
