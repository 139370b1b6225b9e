import { describe, expect, it } from 'vitest';
import { checkTable } from '../../src/potentials/check-table.ts';
import { FILES } from './default-tables.ts';

const check = (text: string) => checkTable({ name: 'ours.csv', text }, FILES);
const found = (text: string) => check(text).faults.map(({ code, place }) => `${place.line} ${code}`);

describe("checking a department's table", () => {
  it('finds nothing in a table that is right', () => {
    expect(check('half-equation,E°,note\nZn^2+ + 2e^- <=> Zn,-0.76,\nCl2 + 2e^- <=> 2Cl^-,1.36,data sheet\n')).toEqual({
      rows: 2,
      faults: [],
      warnings: [],
    });
  });

  it('finds nothing in a copy of our own table', () => {
    expect(check(FILES.get('couples.csv')!)).toMatchObject({ faults: [], warnings: [] });
  });

  it('tells every fault with its line, all of them at once', () => {
    const text = [
      'half-equation,E°',
      'Zn^2+ + 3e^- <=> Zn,-0.76',
      'Xx^2+ + 2e^- <=> Xx,0.1',
      'Fe^3+ + e^- <=> Fe^2+,0.77',
      'Fe^3+ + e^- <=> Fe^2+,0.76',
      'Cu^2+ + 2e^- <=> Cu,minus a third',
      'Ag+ + e^- <=> Ag,0.80',
      'Ag + e^- <=> Ag,0.80',
      'Zn <=> Zn^2+ + 2e^-,0.76',
      ',0.5',
      'Pb^2+ + 2e^- <=> Pb,',
      'Ni^2+ + 2e^- <=> Ni,-250',
    ].join('\n');
    expect(found(text)).toEqual([
      '2 unbalanced',
      '3 bad-formula',
      '5 doubled-couple',
      '6 not-a-number',
      '7 bad-formula',
      '8 unbalanced',
      '8 not-cancelled',
      '9 not-a-reduction',
      '10 missing',
      '11 missing',
      '12 out-of-range',
    ]);
  });

  it('warns of cycles that its rows no longer close, with the line', () => {
    const { faults, warnings } = check('half-equation,E°\nZn^2+ + 2e^- <=> Zn,-0.76\nCu^+ + e^- <=> Cu,0.40\n');
    expect(faults).toEqual([]);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ line: 3, message: expect.stringContaining('miss by 0.061 V per electron') });
  });

  it('says so when there is nothing in it', () => {
    expect(found('')).toEqual(['1 empty-file']);
    expect(check('half-equation,E°\n').faults.map(({ code }) => code)).toEqual(['empty-table']);
    expect(found('equation,volts\nZn^2+ + 2e^- <=> Zn,-0.76\n')).toEqual(
      expect.arrayContaining(['1 missing-column', '1 unknown-column']),
    );
  });
});
