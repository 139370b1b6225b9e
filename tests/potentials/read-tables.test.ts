import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { Fault, type Faults } from '../../src/exact/fault.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import { FILES, FOLDER, TABLES } from './default-tables.ts';

const folder = mkdtempSync(join(tmpdir(), 'couplet-'));
afterAll(() => rmSync(folder, { recursive: true }));

const thrownBy = (read: () => unknown): unknown => {
  try {
    return read();
  } catch (error) {
    return error;
  }
};

describe('reading the tables from a folder', () => {
  it('gives the same tables for the same files', () => {
    cpSync(FOLDER, join(folder, 'copy'), { recursive: true });
    expect(readTables(join(folder, 'copy')).digest).toBe(TABLES.digest);
  });

  it("names a department's table by its file, and tells its faults with the path as given", () => {
    const path = join(folder, 'year-13.csv');
    writeFileSync(path, 'half-equation,E°\nZn^2+ + 2e^- <=> Zn,-0.77\n');
    expect(readTables(FOLDER, path).name).toBe('default + year-13.csv');
    writeFileSync(path, 'half-equation,E°\nZn^2+ + e^- <=> Zn,-0.77\n');
    const faults = (thrownBy(() => readTables(FOLDER, path)) as Faults).faults;
    expect(faults).toMatchObject([{ code: 'unbalanced', place: { file: path, line: 2 } }]);
  });

  it('tells a fault of a data file with the path of that file', () => {
    const broken = join(folder, 'broken');
    cpSync(FOLDER, broken, { recursive: true });
    writeFileSync(join(broken, 'couples.csv'), FILES.get('couples.csv')!.replace('-0.7618', 'x'));
    const faults = (thrownBy(() => readTables(broken)) as Faults).faults;
    expect(faults[0]).toMatchObject({ code: 'not-a-number', place: { file: join(broken, 'couples.csv') } });
  });

  it('says when there is no such file or folder', () => {
    expect(thrownBy(() => readTables(FOLDER, join(folder, 'nowhere.csv')))).toMatchObject({ code: 'unreadable-file' });
    expect(thrownBy(() => readTables(FOLDER, folder))).toBeInstanceOf(Fault);
    const missing = thrownBy(() => readTables(join(folder, 'nowhere'))) as Faults;
    expect(new Set(missing.faults.map(({ code }) => code))).toEqual(new Set(['missing-file']));
  });
});
