import { describe, expect, it } from 'vitest';
import { reportOf } from '../../src/cli/report.ts';
import { underline } from '../../src/cli/underline.ts';
import { Fault, Faults } from '../../src/exact/fault.ts';

const circumstances = {
  version: '9.9.9',
  args: ['sheet', '--seed', "bee's knees", '--level', 'core'],
  seed: "bee's knees",
  trace: false,
};

describe('a report of a fault', () => {
  it('says where it stands, as editors open it, and underlines it', () => {
    const fault = new Fault('bad-formula', 'expected a charge, found `3+`', {
      file: 'own.csv',
      line: 12,
      column: 5,
      text: 'Fe3+ + e-',
      at: 2,
      length: 2,
    });
    expect(reportOf(fault, circumstances)).toEqual({
      status: 2,
      text: 'own.csv:12:5: expected a charge, found `3+`\n  Fe3+ + e-\n    ^^',
    });
  });

  it('leaves out a line or column that is not known', () => {
    expect(reportOf(new Fault('x', 'words', { file: 'own.csv' }), circumstances).text).toBe('own.csv: words');
    expect(reportOf(new Fault('x', 'words', { file: 'own.csv', line: 3 }), circumstances).text).toBe('own.csv:3: words');
    expect(reportOf(new Fault('x', 'words', { file: 'own.csv', column: 3 }), circumstances).text).toBe('own.csv: words');
  });

  it('tells several together and counts them', () => {
    const faults = new Faults([new Fault('x', 'one', { file: 'a', line: 1 }), new Fault('y', 'two', { file: 'a', line: 2 })]);
    expect(reportOf(faults, circumstances)).toEqual({ status: 2, text: 'a:1: one\na:2: two\n2 faults' });
  });

  it('shows control characters and obeys none', () => {
    expect(reportOf(new Fault('x', 'found `\u001b[2J`'), circumstances).text).toBe('couplet: found `\\x1b[2J`');
  });

  it('holds a trace only when one is asked for', () => {
    expect(reportOf(new Fault('x', 'words'), circumstances).text).not.toMatch(/\n\s+at /);
    expect(reportOf(new Fault('x', 'words'), { ...circumstances, trace: true }).text).toMatch(/\n\s+at /);
  });
});

describe('a report of a fault of ours', () => {
  it('asks to be passed on with version, command and seed, and has no trace', () => {
    const { text, status } = reportOf(new TypeError('x is not a function'), circumstances);
    expect(status).toBe(1);
    expect(text).toContain('this is a fault of couplet, not of what you gave it: x is not a function');
    expect(text).toContain('version: couplet 9.9.9, Node ');
    expect(text).toContain("command: couplet sheet --seed 'bee'\\''s knees' --level core");
    expect(text).toContain("seed: 'bee'\\''s knees'");
    expect(text).not.toMatch(/\n\s+at /);
  });

  it('shows where it happened when a trace is asked for', () => {
    expect(reportOf(new TypeError('oh'), { ...circumstances, trace: true }).text).toMatch(/\n\s+at /);
  });

  it('copes with things thrown that are no errors', () => {
    expect(reportOf('oh', circumstances)).toMatchObject({ status: 1, text: expect.stringContaining('oh') });
    expect(reportOf(undefined, { ...circumstances, seed: undefined }).text).not.toContain('seed:');
  });
});

describe('underlining', () => {
  it('draws one caret at least, also behind the end', () => {
    expect(underline('abc', 3, 0)).toBe('  abc\n     ^');
  });

  it('shows of several lines the one with the fault', () => {
    expect(underline('one\ntwo\nthree', 5, 1)).toBe('  two\n   ^');
  });

  it('counts characters, not units or marks', () => {
    expect(underline('\u{1d400}e\u0301x', 4, 1)).toBe('  \u{1d400}e\u0301x\n    ^');
    expect(underline('Cr₂O₇²⁻ + Zn', 10, 2)).toBe('  Cr₂O₇²⁻ + Zn\n            ^^');
  });

  it('puts a space for a tab, so that the carets stand right', () => {
    expect(underline('a\tb\u0000c', 2, 1)).toBe('  a b\ufffdc\n    ^');
  });

  it('cuts a long line around the fault', () => {
    const long = `${'a'.repeat(300)}!${'b'.repeat(300)}`;
    const [line, carets] = underline(long, 300, 1).split('\n');
    expect(line!.length).toBeLessThan(104);
    expect(line![carets!.indexOf('^')]).toBe('!');
    expect(line).toMatch(/^ {2}… a+!b+ …$/);
  });

  it('never draws carets beyond a line that was cut', () => {
    const [line, carets] = underline('x'.repeat(500), 100, 400).split('\n');
    expect(carets!.length).toBeLessThanOrEqual(line!.length);
  });
});
