import { describe, expect, it } from 'vitest';
import { folderName, nameFromSeed } from '../../src/cli/folder-name.ts';
import { freshSeed } from '../../src/cli/fresh-seed.ts';
import { OPTIONS } from '../../src/cli/options.ts';
import { progressOn } from '../../src/cli/progress.ts';
import stringWidth from '../../src/cli/string-width.ts';

describe('options', () => {
  it('keep numbers as they were typed until they are read', () => {
    expect(OPTIONS.choice.read(['0.50'], 'choice')).toBe(0.5);
    expect(OPTIONS.seed.read(['2.50'], 'seed')).toBe('2.50');
    expect(OPTIONS.questions.read(['007'], 'questions')).toBe(7);
  });

  it('take lists repeated or parted by commas, each word once', () => {
    expect(OPTIONS.without.read(['Cr2O7^2-, cell-emf', 'cell-emf'], 'without')).toEqual(['Cr2O7^2-', 'cell-emf']);
    expect(OPTIONS.without.read([], 'without')).toEqual([]);
  });

  it('have the first word of their table unless another is given', () => {
    expect([OPTIONS.level.read([], 'level'), OPTIONS.support.read([], 'support')]).toEqual(['core', 'open']);
    expect([OPTIONS.units.read([], 'units'), OPTIONS.page.read([], 'page')]).toEqual(['dm', 'a4']);
  });
});

describe('a name', () => {
  it('is made of the letters and digits of the seed', () => {
    expect(nameFromSeed('Tuesday group, 7B!')).toBe('tuesday-group-7b');
    expect(nameFromSeed('Übung 3')).toBe('übung-3');
  });

  it.each(['!!!', 'con', '…', 'lpt1', 'x'.repeat(120), '-', 'a'])(
    'made from the seed %j is one that a folder can have',
    (seed) => {
      expect(folderName(nameFromSeed(seed))).toBe(nameFromSeed(seed));
    },
  );

  it('may hold what folders on every system may hold', () => {
    expect(folderName('Year 12 – set 1'.replace('–', '-'))).toBe('Year 12 - set 1');
    for (const name of ['.hidden', '-x', 'a.', 'a ', 'a:b', 'a\\b', 'NUL.txt', '..'])
      expect(() => folderName(name)).toThrow('folder');
  });
});

describe('a fresh seed', () => {
  it('is a word that can be said, and another one every time', () => {
    const seeds = Array.from({ length: 20 }, freshSeed);
    for (const seed of seeds) expect(seed).toMatch(/^([b-z][aeiou]){3}[lmnrst]$/);
    expect(new Set(seeds).size).toBeGreaterThan(15);
  });
});

describe('progress', () => {
  const run = (isTTY: boolean, times: readonly number[]) => {
    let clock = 0;
    const written: string[] = [];
    const stream = { isTTY, write: (text: string) => written.push(text) > 0 } as unknown as NodeJS.WriteStream;
    const progress = progressOn(stream, () => clock);
    times.forEach((time, at) => {
      clock = time;
      progress.at('Making questions', at + 1, times.length);
    });
    progress.end();
    return written.join('');
  };

  it('is silent for half a second', () => {
    expect(run(true, [0, 200, 499])).toBe('');
    expect(run(false, [0, 200, 499])).toBe('');
  });

  it('writes one line over and over on a terminal, and takes it away at the end', () => {
    const line = 'Making questions: 2 of 4';
    const blank = ' '.repeat(line.length);
    expect(run(true, [0, 501, 550, 650])).toBe(`\r${line}\rMaking questions: 4 of 4\r${blank}\r`);
  });

  it('writes few plain lines elsewhere', () => {
    expect(run(false, [0, 600, 1000, 2700])).toBe('Making questions: 2 of 4\nMaking questions: 4 of 4\n');
  });
});

describe('the width of a text', () => {
  it('is one for a character and none for a mark on it', () => {
    expect([stringWidth('cm³'), stringWidth('⇌ →'), stringWidth('e\u0301'), stringWidth('')]).toEqual([3, 3, 1, 0]);
  });
});
