import { describe, expect, it } from 'vitest';
import { decimalText } from '../../src/exact/decimal.ts';
import { Faults } from '../../src/exact/fault.ts';
import { parseTables } from '../../src/potentials/parse-tables.ts';
import { FILES, TABLES } from './default-tables.ts';

const withTable = (text: string) => parseTables(FILES, { name: 'our-sheet.csv', text });

describe("a department's own table", () => {
  it('changes the potential, source and note of a couple, and nothing else', () => {
    const { couple, name } = withTable('half-equation,E°,note\nCr2O7^2- + 14H^+ + 6e^- <=> 2Cr^3+ + 7H2O,1.36,data sheet 2024\n');
    const [ours, theirs] = [TABLES.couple('Cr2O7^2-/Cr^3+'), couple('Cr2O7^2-/Cr^3+')];
    expect(name).toBe('default + our-sheet.csv');
    expect(decimalText(theirs.stored)).toBe('1.36');
    expect(theirs.source).toBe('our-sheet.csv');
    expect(theirs.note).toBe('data sheet 2024');
    expect({ ...theirs, stored: ours.stored, printed: ours.printed, source: ours.source, note: ours.note }).toEqual(ours);
  });

  it('gives the table another name and another digest, even when no value differs', () => {
    const same = withTable('half-equation,E°\nZn^2+ + 2e^- <=> Zn,-0.7618\n');
    expect(same.digest).toMatch(/^[0-9a-f]{12}$/);
    expect(same.digest).not.toBe(TABLES.digest);
    expect(parseTables(FILES).digest).toBe(TABLES.digest);
  });

  it('knows a couple again in another multiple, state or spelling', () => {
    const { couple, couples } = withTable(
      'half-equation,E° / V\n½Cl2 + e^- <=> Cl^-,1.36\nBr2(l) + 2e^- <=> 2Br^-,1.07\nHClO + H^+ + 2e^- <=> Cl^- + H2O,1.49\n' +
        'MnO4^- + 2H2O + 3e^- -> MnO2 + 4OH^-,0.59\nZn(OH)4^2- + 2e^- = Zn + 4OH^-,-1.2\n',
    );
    expect(couples.length).toBe(TABLES.couples.length);
    const ids = ['Cl2/Cl^-', 'Br2/Br^-', 'HOCl/Cl^-', 'MnO4^-/MnO2@alkali', '[Zn(OH)4]^2-/Zn'];
    expect(ids.map((id) => decimalText(couple(id).stored))).toEqual(['1.36', '1.07', '1.49', '0.59', '-1.2']);
    expect(decimalText(couple('MnO4^-/MnO2@acid').stored)).toBe('1.70');
  });

  it('adds a couple that is not there, usual where no other couple of its species is', () => {
    const { couple, speciesOf } = withTable(
      'half-equation,E°\nPd^2+(aq) + 2e^- <=> Pd(s),0.92\nCr2O7^2- + 14H^+ + 12e^- <=> 2Cr + 7H2O,0.29\n',
    );
    expect(couple('Pd^2+/Pd')).toMatchObject({
      usualOxidant: ['acid', 'neutral'],
      usualReductant: ['acid', 'neutral'],
      medium: 'neutral',
    });
    expect(couple('Cr2O7^2-/Cr')).toMatchObject({ usualOxidant: [], usualReductant: ['acid'] });
    expect(speciesOf('Pd')).toMatchObject({ name: 'Pd', role: 'solid' });
  });

  it('keeps the table in order of potential', () => {
    const values = withTable('half-equation,E°\nZn^2+ + 2e^- <=> Zn,3.5\n').couples.map((couple) => couple.stored.value);
    expect(values.every((value, at) => at === 0 || values[at - 1]!.compare(value) <= 0)).toBe(true);
  });

  it('may come from a spreadsheet: byte order mark, CRLF, semicolons, quotes, empty lines', () => {
    const { couple } = withTable('\uFEFF"half-equation";"E°"\r\n\r\n"Zn^2+ + 2e^- <=> Zn";\u22120.77\r\n;\r\n');
    expect(decimalText(couple('Zn^2+/Zn').stored)).toBe('-0.77');
  });

  it('may be a corrected copy of the default file', () => {
    const { couple } = withTable(FILES.get('couples.csv')!.replace('-0.7618', '-0.77'));
    expect(decimalText(couple('Zn^2+/Zn').stored)).toBe('-0.77');
    expect(couple('Ag^+/Ag').source).toBe('OpenStax Chemistry 2e, Appendix L');
  });

  it('warns of cycles that no longer close', () => {
    const { warnings } = withTable('half-equation,E°\nCu^+ + e^- <=> Cu,0.40\n');
    expect(warnings.join()).toContain('Cu^+/Cu (+0.40 V)');
  });

  it('is refused with every fault and its line', () => {
    const text =
      'half-equation,E°\nZn^2+ + 2e^- <=> Zn,-0.76\nFe^3+ + 2e^- <=> Fe^2+,0.77\nZn^2+ + 2e^- <=> Zn,-0.77\nAg^+ + e^- <=> Ag,high\n';
    const caught = (() => {
      try {
        return withTable(text);
      } catch (error) {
        return error;
      }
    })();
    expect(caught).toBeInstanceOf(Faults);
    expect((caught as Faults).faults.map(({ code, place }) => `${place.file}:${place.line} ${code}`)).toEqual([
      'our-sheet.csv:3 unbalanced',
      'our-sheet.csv:4 doubled-couple',
      'our-sheet.csv:5 not-a-number',
    ]);
  });
});
