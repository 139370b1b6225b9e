import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { inProject } from '../support/data.ts';
import { auditPaper } from './audit.ts';
import { CASES } from './cases/index.ts';
import { Ledger } from './engine/ledger.ts';
import { kitchenIn } from './make/kitchen.ts';
import { askFor, paperDocuments } from './make/papers.ts';

/** Files of the auditor itself; the maker's folder and tests apart. */
const files = readdirSync(inProject('tests/audit'), { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts') && !/^make\/|\.test\.ts$|^run\.ts$/.test(file),
);

describe('the auditor', () => {
  it('imports nothing from the program but types', () => {
    for (const file of files) {
      const imports =
        readFileSync(join(inProject('tests/audit'), file), 'utf8').match(/^import .* from '[^']*\/src\/[^']*';$/gm) ?? [];
      for (const line of imports) expect(`${file}: ${line}`).toMatch(/: import type /);
    }
    expect(files.length).toBeGreaterThan(40);
  });

  it('knows every family', () => {
    expect(Object.keys(CASES).sort()).toEqual(FAMILIES.map(({ id }) => id).sort());
  });

  it('finds nothing wrong in sixty papers and reaches every computed point', () => {
    const kitchen = kitchenIn(inProject('.'));
    const ledger = new Ledger();
    for (let paper = 0; paper < 60; paper += 1) auditPaper(paperDocuments(askFor(paper), kitchen), ledger);
    expect(ledger.findings).toEqual([]);
    expect(ledger.unreached).toEqual({});
    const ways = FAMILIES.flatMap(({ id, answering }) => answering.map((each) => `${id} ${each}`));
    expect(new Set(Object.keys(ledger.counts).map((key) => key.split('\t').slice(0, 2).join(' ')))).toEqual(
      new Set([...ways, 'paper paper']),
    );
  });
});
