import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { FamilyFacts } from '../../src/cli/family-facts.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { couplet, root } from './run-couplet.ts';

describe('couplet families', () => {
  it('lists every family with its topics, marks and minutes at each level', async () => {
    const { status, stdout, stderr } = await couplet(['families']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    for (const { id, title, topics } of FAMILIES) {
      expect(stdout).toContain(`${id}: ${title}\n`);
      expect(stdout).toContain(`  topics: ${topics.join(', ')}\n`);
    }
    expect(stdout.match(/^ {2}core, \d+( to \d+)? marks, \d+( to \d+)? minutes$/gm)).toHaveLength(FAMILIES.length);
    expect(stdout.match(/^ {2}stretch, \d+( to \d+)? marks, \d+( to \d+)? minutes$/gm)).toHaveLength(FAMILIES.length);
  });

  it('tells of one family the misconceptions too, by name', async () => {
    const { stdout } = await couplet(['families', 'cell-emf']);
    const family = FAMILIES.find(({ id }) => id === 'cell-emf')!;
    for (const each of [...family.topics, ...family.misconceptions]) expect(stdout).toContain(each);
  });

  it('prints the same as JSON: a list, or one object', async () => {
    const all = JSON.parse((await couplet(['families', '--json'])).stdout) as FamilyFacts[];
    expect(all.map(({ id }) => id)).toEqual(FAMILIES.map(({ id }) => id));
    const one = JSON.parse((await couplet(['families', 'cell-emf', '--json'])).stdout) as FamilyFacts;
    expect(one).toEqual(all.find(({ id }) => id === 'cell-emf'));
    expect(one.levels.map(({ level }) => level)).toEqual(['core', 'stretch']);
    for (const { marks, minutes } of one.levels)
      expect(marks[0] > 0 && marks[0] <= marks[1] && minutes[0] <= minutes[1]).toBe(true);
  });

  it('knows every misconception it lists', async () => {
    const named = JSON.parse(readFileSync(join(root, 'potentials/misconceptions.json'), 'utf8')) as unknown;
    const all = JSON.parse((await couplet(['families', '--json'])).stdout) as FamilyFacts[];
    for (const { id, name } of all.flatMap(({ misconceptions }) => misconceptions)) {
      expect(JSON.stringify(named)).toContain(id);
      expect(name).not.toBe(id);
    }
  });

  it('says what there is when a family is unknown', async () => {
    const { status, stdout, stderr } = await couplet(['families', 'cell-emff']);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain('no family is called `cell-emff`; did you mean `cell-emf`?');
  });
});
