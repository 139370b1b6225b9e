import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('..', import.meta.url).pathname;
const src = join(root, 'src');

/** The rooms, and which others each may import from. Data walks from the top of this table to its foot. */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  exact: [],
  random: ['exact'],
  chemistry: ['exact'],
  potentials: ['chemistry', 'exact'],
  document: ['chemistry', 'exact'],
  questions: ['exact', 'random', 'chemistry', 'potentials', 'document'],
  papers: ['exact', 'random', 'chemistry', 'potentials', 'document', 'questions'],
  printers: ['document', 'chemistry', 'exact'],
  readers: ['exact'],
  // calculators answer with the questions' own engine
  cli: ['exact', 'chemistry', 'potentials', 'papers', 'printers', 'readers'],
};

/** Beside whole rooms, what cli takes by value: what every user's mistake is made of, and what it hands inwards. Types it takes from all. */
const CLI_ALSO: Readonly<Record<string, string>> = {
  'random/code.ts': 'names the wording that was read',
  'random/draws.ts': 'a seed for who gives none, and samples of a family',
  'random/pronounceable.ts': 'a seed for who gives none',
  'document/wording.ts': 'templates are read here, since document touches no file',
  'questions/families/index.ts': 'the list of families',
  'questions/part-marks.ts': 'what the questions of a family are worth',
};

/** Node's modules that a room may use: only potentials and cli touch files, clock and environment. */
const NODE: Readonly<Record<string, readonly string[]>> = {
  random: ['node:crypto'],
  potentials: ['node:fs', 'node:path', 'node:crypto'],
  // compressing and expanding streams of a PDF touches nothing outside
  printers: ['node:zlib'],
  readers: ['node:zlib'],
  cli: ['node:fs', 'node:path', 'node:crypto', 'node:module', 'node:process', 'node:url'],
};

/** Packages, each for one purpose in one room. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  random: ['seedrandom'],
  document: ['handlebars'],
  printers: ['pdfkit', 'fontkit'],
  cli: ['yargs', 'yargs/helpers'],
};

interface Import {
  readonly file: string;
  readonly from: string;
  readonly typeOnly: boolean;
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesIn(join(folder, entry.name)) : /(?<!\.d)\.ts$/.test(entry.name) ? [join(folder, entry.name)] : [],
  );
}

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const still = [...text.matchAll(/^(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm)];
  const lazy = [...text.matchAll(/\bimport\('([^']+)'\)/g)];
  return [
    ...still.map(([whole, type, from]) => ({ file, from: from!, typeOnly: type !== undefined || onlyTypes(whole) })),
    ...lazy.map(([, from]) => ({ file, from: from!, typeOnly: false })),
  ];
}

/** `import { type A, type B } from …` */
function onlyTypes(statement: string): boolean {
  const names = /\{([^}]*)\}/.exec(statement)?.[1]?.split(',') ?? [];
  return names.length > 0 && names.every((name) => name.trim() === '' || name.trim().startsWith('type '));
}

const imports = filesIn(src).flatMap(importsOf);
const roomOf = (file: string): string => relative(src, file).split('/')[0]!;
const told = ({ file, from }: Import): string => `${relative(src, file)} imports ${from}`;

describe('the rooms of src/', () => {
  it('are those of the table', () => {
    const folders = readdirSync(src, { withFileTypes: true }).filter(
      (entry) => entry.isDirectory() && readdirSync(join(src, entry.name)).length > 0,
    );
    expect(folders.map(({ name }) => name).filter((name) => !(name in ROOMS))).toEqual([]);
    expect(readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isFile())).toEqual([]);
  });

  it('import only from the rooms of their row', () => {
    expect(imports.filter(({ from }) => from.startsWith('.')).length).toBeGreaterThan(100);
    const wrong = imports.filter((each) => {
      if (!each.from.startsWith('.')) return false;
      const target = relative(src, resolve(dirname(each.file), each.from));
      if (target === '../package.json') return roomOf(each.file) !== 'cli';
      const [room, there] = [roomOf(each.file), target.split('/')[0]!];
      if (room === there || ROOMS[room]!.includes(there)) return false;
      return !(room === 'cli' && (each.typeOnly || target in CLI_ALSO));
    });
    expect(wrong.map(told)).toEqual([]);
  });

  it('write the ending of a file that they import', () => {
    expect(imports.filter(({ from }) => from.startsWith('.') && !/\.(ts|json)$/.test(from)).map(told)).toEqual([]);
  });

  it('use only the packages that belong to them', () => {
    const packages = imports.filter(({ from }) => !from.startsWith('.') && !from.startsWith('node:'));
    expect(packages.filter(({ file, from }) => !(PACKAGES[roomOf(file)] ?? []).includes(from)).map(told)).toEqual([]);
  });

  it('leave files, clock and environment to potentials and cli', () => {
    const node = imports.filter(({ from }) => from.startsWith('node:'));
    expect(node.filter(({ file, from }) => !(NODE[roomOf(file)] ?? []).includes(from)).map(told)).toEqual([]);
    const asking =
      /\bprocess\.|\bDate\.now|\bnew Date\(\)|\bperformance\.|\bMath\.random|\bMath\.pow|\btoLocale|\blocaleCompare|\bIntl\./;
    const elsewhere = filesIn(src).filter((file) => !['cli', 'potentials'].includes(roomOf(file)) && asking.test(codeOf(file)));
    expect(elsewhere.map((file) => relative(src, file))).toEqual([]);
  });
});

/** A file's text without its comments. */
function codeOf(file: string): string {
  return readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '');
}

describe('the top of the project', () => {
  it('holds the folders and files that were agreed, and dotfiles', () => {
    const agreed = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'src',
      'templates',
      'potentials',
      'tests',
      'out',
    ];
    const found = readdirSync(root).filter((name) => !name.startsWith('.') && name !== 'node_modules');
    expect(found.filter((name) => !agreed.includes(name))).toEqual([]);
  });
});
