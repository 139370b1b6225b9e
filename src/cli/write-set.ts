import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { EXTRA_FILES } from './extra-names.ts';
import { systemFault } from './system-fault.ts';

/** Files of one set by name, in the order in which they are told. */
export type FileSet = ReadonlyMap<string, Uint8Array | string>;

/** Every file that a set may hold. A set that replaces another leaves none of the other's behind: they would not match. */
const OURS = ['questions.pdf', 'mark-scheme.pdf', 'candidates.pdf', 'record.json', ...Object.values(EXTRA_FILES)];

/** Says whether a folder that is there may be replaced; throws a Fault when it may not. */
export type MayReplace = (folder: string) => void;

/**
 * Checks, before any work is done, that a set can go into a folder.
 * @throws Fault `existing-result` when something is there that may not be replaced
 */
export function checkPlace(folder: string, mayReplace: MayReplace): void {
  if (isTaken(folder)) mayReplace(folder);
}

/**
 * Writes a set as one: all of its files or, when anything fails, none. It is written beside its place and moved there whole.
 * Nothing here waits, so that an interruption from the keyboard comes before or after the set, not within it.
 * @throws Fault `cannot-write`, naming the folder and the reason
 */
export function writeSet(folder: string, files: FileSet, mayReplace: MayReplace): void {
  checkPlace(folder, mayReplace);
  const hold = () => undefined;
  process.once('SIGINT', hold).once('SIGTERM', hold);
  const made = makeFolder(dirname(folder));
  const beside = join(dirname(folder), `.couplet-${randomBytes(4).toString('hex')}`);
  try {
    mkdirSync(beside);
    for (const [name, content] of files) writeFileSync(join(beside, name), content);
    if (isTaken(folder)) exchange(folder, beside, [...files.keys()]);
    else moveIn(folder, beside);
  } catch (error) {
    rmSync(beside, { recursive: true, force: true });
    if (made !== undefined) rmSync(made, { recursive: true, force: true });
    throw systemFault('cannot-write', `to write into the folder \`${dirname(folder)}\``, error);
  } finally {
    process.off('SIGINT', hold).off('SIGTERM', hold);
  }
}

/**
 * Makes a folder and those above it. One by one, since Node's own way of making them all never ends where the system refuses with ENOENT.
 * @returns the outermost folder that had to be made, to be taken away again if the set cannot be written
 */
function makeFolder(folder: string): string | undefined {
  const missing: string[] = [];
  for (let each = resolve(folder); !existsSync(each); each = dirname(each)) missing.unshift(each);
  try {
    for (const each of missing) mkdirSync(each);
    if (!statSync(folder).isDirectory()) throw Object.assign(new Error(folder), { code: 'EEXIST' });
  } catch (error) {
    if (missing[0] !== undefined) rmSync(missing[0], { recursive: true, force: true });
    throw systemFault('cannot-write', `to make the folder \`${folder}\``, error);
  }
  return missing[0];
}

/** An empty folder is as good as none. */
function isTaken(folder: string): boolean {
  return existsSync(folder) && !(statSync(folder).isDirectory() && readdirSync(folder).length === 0);
}

function moveIn(folder: string, beside: string): void {
  if (existsSync(folder)) rmdirSync(folder);
  renameSync(beside, folder);
}

/** Puts the new files in place of ours, and every old one back if that fails. Files of the user's in the folder stay. */
function exchange(folder: string, beside: string, names: readonly string[]): void {
  const undo: (() => void)[] = [];
  const move = (from: string, to: string) => {
    renameSync(from, to);
    undo.unshift(() => renameSync(to, from));
  };
  try {
    for (const name of OURS) if (existsSync(join(folder, name))) move(join(folder, name), join(beside, `${name}.old`));
    for (const name of names) move(join(beside, name), join(folder, name));
  } catch (error) {
    for (const step of undo) step();
    throw error;
  }
  rmSync(beside, { recursive: true, force: true });
}
