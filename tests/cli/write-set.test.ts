import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkPlace, writeSet } from '../../src/cli/write-set.ts';
import { Fault } from '../../src/exact/fault.ts';
import { emptyFolder } from './run-couplet.ts';

const files = new Map([
  ['questions.pdf', 'new questions'],
  ['mark-scheme.pdf', 'new scheme'],
  ['record.json', '{}'],
]);
const always = () => undefined;
const never = (folder: string) => {
  throw new Fault('existing-result', folder);
};

function faultOf(work: () => void): Fault {
  try {
    work();
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}

describe('a set of files', () => {
  it('is written whole, with the folders above it, and leaves nothing beside it', () => {
    const top = emptyFolder();
    writeSet(join(top, 'a/b/set'), files, never);
    expect(readdirSync(join(top, 'a/b'))).toEqual(['set']);
    expect(readdirSync(join(top, 'a/b/set')).sort()).toEqual([...files.keys()].sort());
    expect(readFileSync(join(top, 'a/b/set/questions.pdf'), 'utf8')).toBe('new questions');
  });

  it('may go into an empty folder', () => {
    const folder = emptyFolder();
    writeSet(folder, files, never);
    expect(readdirSync(folder)).toHaveLength(3);
  });

  it('does not go where something is, unless it may', () => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'questions.pdf'), 'old');
    expect(faultOf(() => checkPlace(folder, never)).code).toBe('existing-result');
    expect(faultOf(() => writeSet(folder, files, never)).code).toBe('existing-result');
    expect(readFileSync(join(folder, 'questions.pdf'), 'utf8')).toBe('old');
  });

  it('replaces every file of a set, leaves none behind that would not match, and keeps what is not ours', () => {
    const folder = emptyFolder();
    for (const name of [...files.keys(), 'my notes.txt']) writeFileSync(join(folder, name), 'old');
    const [, ...fewer] = [...files];
    writeSet(folder, new Map(fewer), always);
    expect(readdirSync(folder).sort()).toEqual(['mark-scheme.pdf', 'my notes.txt', 'record.json']);
    expect(readFileSync(join(folder, 'mark-scheme.pdf'), 'utf8')).toBe('new scheme');
    expect(readFileSync(join(folder, 'my notes.txt'), 'utf8')).toBe('old');
  });

  it('puts every old file back when one new file cannot take its place', () => {
    const top = emptyFolder();
    const folder = join(top, 'set');
    mkdirSync(folder);
    for (const name of files.keys()) writeFileSync(join(folder, name), `old ${name}`);
    mkdirSync(join(folder, 'extra.pdf/inside'), { recursive: true });
    const fault = faultOf(() => writeSet(folder, new Map([...files, ['extra.pdf', 'new']]), always));
    expect(fault.code).toBe('cannot-write');
    for (const name of files.keys()) expect(readFileSync(join(folder, name), 'utf8')).toBe(`old ${name}`);
    expect(readdirSync(top)).toEqual(['set']);
  });

  it('leaves nothing when one of its files cannot be written, not even the folders it made', () => {
    const top = emptyFolder();
    const fault = faultOf(() => writeSet(join(top, 'a/b/set'), new Map([...files, ['no/such/folder.pdf', 'x']]), never));
    expect(fault.code).toBe('cannot-write');
    expect(readdirSync(top)).toEqual([]);
  });

  it('names the folder and the reason when it cannot be written', () => {
    const top = emptyFolder();
    writeFileSync(join(top, 'file'), '');
    const fault = faultOf(() => writeSet(join(top, 'file/set'), files, never));
    expect(fault.message).toMatch(/^expected to make the folder `.*file`, but .+ \((ENOTDIR|EEXIST)\)$/);
    expect(existsSync(join(top, 'file/set'))).toBe(false);
  });

  it('leaves the handling of interruptions as it was', () => {
    const before = process.listenerCount('SIGINT');
    writeSet(join(emptyFolder(), 'set'), files, never);
    expect(process.listenerCount('SIGINT')).toBe(before);
  });
});
