import { describe, expect, it } from 'vitest';
import { type Fault, Faults } from '../../src/exact/fault.ts';
import { parseTables } from '../../src/potentials/parse-tables.ts';
import { FILES, filesWith, lineOf } from './default-tables.ts';

/** What is broken: file, the text that is replaced, what stands there instead, and the fault that is told of that line. */
const BROKEN: readonly (readonly [what: string, file: string, from: string, to: string, code: string, says: RegExp])[] = [
  ['an unbalanced half-equation', 'couples.csv', 'Zn^2+(aq) + 2e^-', 'Zn^2+(aq) + 3e^-', 'unbalanced', /charge/],
  [
    'coefficients with a common divisor',
    'couples.csv',
    'Zn^2+(aq) + 2e^- <=> Zn(s)',
    '2Zn^2+(aq) + 4e^- <=> 2Zn(s)',
    'not-lowest',
    /common divisor/,
  ],
  [
    'an oxidation in place of a reduction',
    'couples.csv',
    'Zn^2+(aq) + 2e^- <=> Zn(s)',
    'Zn(s) <=> Zn^2+(aq) + 2e^-',
    'not-a-reduction',
    /reduction/,
  ],
  [
    'an unknown element',
    'couples.csv',
    'Zn^2+(aq) + 2e^- <=> Zn(s)',
    'Zx^2+(aq) + 2e^- <=> Zx(s)',
    'bad-formula',
    /no element has the symbol `Zx`/,
  ],
  [
    'a charge without its caret',
    'couples.csv',
    'Fe^3+(aq) + e^-',
    'Fe3+(aq) + e^-',
    'bad-formula',
    /iron\(III\) ion write `Fe\^3\+`/,
  ],
  ['a charge left out', 'couples.csv', 'Fe^3+(aq) + e^- <=> Fe^2+(aq)', 'Fe(aq) + e^- <=> Fe^2+(aq)', 'unbalanced', /charge/],
  ['a potential that is not a number', 'couples.csv', '-0.7618', '-0,7618', 'too-many-cells', /needs quotes/],
  ['a potential in words', 'couples.csv', '-0.7618', 'about -0.76', 'not-a-number', /expected a decimal number/],
  ['a potential in millivolts', 'couples.csv', '-0.7618', '-761.8', 'out-of-range', /between -5 and \+5 volts/],
  ['a potential left out', 'couples.csv', '-0.7618', '', 'missing', /`E° \/ V`/],
  [
    'a source left out',
    'couples.csv',
    '0.771,neutral,acid; neutral,acid; neutral,,"OpenStax Chemistry 2e, Appendix L"',
    '0.771,neutral,acid; neutral,acid; neutral,,',
    'missing',
    /`source`/,
  ],
  ['a medium that is none', 'couples.csv', '1.507,acid,acid', '1.507,acid,acidic', 'bad-word', /did you mean `acid`/],
  [
    'the wrong medium',
    'couples.csv',
    '1.507,acid,acid',
    '1.507,neutral,acid',
    'wrong-medium',
    /expected medium `acid`, because H\^\+ takes part/,
  ],
  [
    'an equation where nothing is reduced',
    'couples.csv',
    'Zn^2+(aq) + 2e^- <=> Zn(s)',
    'Zn^2+(aq) + Cl^-(aq) <=> ZnCl^+(aq)',
    'not-a-reduction',
    /electrons/,
  ],
  [
    'a species that is not described',
    'couples.csv',
    'Ti^2+(aq) + 2e^- <=> Ti(s)',
    'Zr^4+(aq) + 4e^- <=> Zr(s)',
    'unknown-species',
    /`Zr\^4\+`/,
  ],
  ['a state left out', 'species.csv', 'MnO4^-(aq)', 'MnO4^-', 'missing', /state/],
  [
    'a role that is none',
    'species.csv',
    'hydrogen,,colourless,,"common practice, no source",gas',
    'hydrogen,,colourless,,"common practice, no source",vapour',
    'bad-word',
    /`metal`/,
  ],
  [
    'a colour without a source',
    'species.csv',
    'orange,,"OpenStax Chemistry 2e, section 11.1"',
    'orange,,',
    'missing',
    /`colour source`/,
  ],
  [
    'a salt that does not add up',
    'salts.csv',
    'K2Cr2O7,potassium dichromate(VI),Cr2O7^2-,1,2 K^+',
    'K2Cr2O7,potassium dichromate(VI),Cr2O7^2-,1,K^+',
    'salt-does-not-add-up',
    /K/,
  ],
  [
    'a salt of an unknown ion',
    'salts.csv',
    'KIO3,potassium iodate(V),IO3^-',
    'KIO3,potassium iodate(V),IO4^-',
    'unknown-species',
    /`IO4\^-`/,
  ],
  ['a fact of an unknown species', 'pair-facts.csv', 'BrO3^-,Br^-', 'BrO4^-,Br^-', 'unknown-species', /did you mean/],
  ['a verdict that is none', 'pair-facts.csv', 'BrO3^-,Br^-,acid,conditional', 'BrO3^-,Br^-,acid,slowly', 'bad-word', /`slow`/],
  [
    'a condition left out',
    'pair-facts.csv',
    'conditional,time,slow enough',
    'conditional,,slow enough',
    'needs-and-verdict',
    /needs/,
  ],
  [
    'a restriction of an unknown couple',
    'restrictions.csv',
    'S4O6^2-/S2O3^2-',
    'S4O6^2-/S2O4^2-',
    'unknown-couple',
    /did you mean `S4O6\^2-\/S2O3\^2-`/,
  ],
  [
    'a count that is none',
    'speciations.csv',
    'CrO4^2-,acid,Cr2O7^2-,1/2',
    'CrO4^2-,acid,Cr2O7^2-,half',
    'not-a-number',
    /expected a number/,
  ],
  ['a ban of an unknown substance', 'bans.csv', 'KCl,Ag^+', 'KCk,Ag^+', 'bad-formula', /Ck/],
  ['a hazard statement that is none', 'hazards.csv', 'H319 H335', 'H319 H33', 'bad-statement', /`H33`/],
  ['a band that ends below its beginning', 'hazards.csv', '0.02,0.2', '0.2,0.02', 'bad-band', /ends above/],
  ['a mass that is rounded wrongly', 'atomic-masses.csv', '35.45,35.5', '35.45,35.4', 'wrong-rounding', /expected 35.5/],
  ['an unknown element among the masses', 'atomic-masses.csv', 'Cl,chlorine', 'Ch,chlorine', 'unknown-element', /`Ch`/],
  [
    'an unknown couple that is titrated',
    'titrations.csv',
    'Ce^4+/Ce^3+',
    'Ce^4+/Ce^2+',
    'unknown-couple',
    /did you mean `Ce\^4\+\/Ce\^3\+`/,
  ],
];

const faultsOf = (files: ReadonlyMap<string, string>): readonly Fault[] => {
  try {
    parseTables(files);
    return [];
  } catch (error) {
    if (error instanceof Faults) return error.faults;
    throw error;
  }
};

describe('a data file with a mistake', () => {
  it.each(BROKEN)('is refused for %s, with the line', (_what, file, from, to, code, says) => {
    const found = faultsOf(filesWith(file, from, to)).filter((fault) => fault.code === code);
    const line = lineOf(file, from);
    expect(found.map((fault) => fault.place.line)).toContain(line);
    expect(found.find((fault) => fault.place.line === line)!.place.file).toBe(file);
    expect(found.map((fault) => fault.message).join('\n')).toMatch(says);
  });

  it('is refused when two hazards rows speak of one substance at one concentration', () => {
    const files = filesWith('hazards.csv', ',1.5,2.3,Warning', ',1.5,2.5,Warning');
    expect(faultsOf(files)).toMatchObject([{ code: 'band-overlap' }, { code: 'band-overlap' }]);
  });

  it('is refused when a signal word stands without hazard statements', () => {
    const files = filesWith('hazards.csv', 'water,H2O,liquid,,,none', 'water,H2O,liquid,,,Danger');
    expect(faultsOf(files).map((fault) => fault.code)).toEqual(['signal']);
  });

  it('is refused when the feedback to a pupil is longer than thirty words', () => {
    const files = filesWith('misconceptions.json', '"feedback": "', `"feedback": "${'and so on '.repeat(11)}`);
    expect(faultsOf(files).map((fault) => fault.code)).toEqual(['long-feedback']);
  });

  it('is refused when a misconception names evidence that is nowhere told', () => {
    const files = filesWith('misconceptions.json', '"BB14"\n', '"BB15"\n');
    const line = lineOf('misconceptions.json', '"id": "ON-ION-CHARGE"');
    expect(faultsOf(files)).toMatchObject([{ code: 'unknown-source', place: { file: 'misconceptions.json', line } }]);
  });

  it('is refused when a couple stands twice, telling where it stands first', () => {
    const row = 'Zn^2+(aq) + 2e^- <=> Zn(s),-0.76,neutral,,,,from memory,\n';
    const [fault, ...more] = faultsOf(new Map(FILES).set('couples.csv', FILES.get('couples.csv') + row));
    expect(more).toEqual([]);
    expect(fault).toMatchObject({ code: 'doubled-couple', place: { file: 'couples.csv' } });
    expect(fault!.message).toContain(`line ${lineOf('couples.csv', 'Zn^2+(aq) + 2e^-')} of couples.csv`);
  });

  it('is refused when two couples are the usual one of a species', () => {
    const files = filesWith('couples.csv', '1.70,acid,,', '1.70,acid,acid,');
    const [fault] = faultsOf(files);
    expect(fault).toMatchObject({ code: 'two-usual-couples', place: { line: lineOf('couples.csv', '1.70,acid') } });
    expect(fault!.message).toContain('usual couple of `MnO4^-` as oxidant in acid');
  });

  it('tells every fault of all files together, in order of file and line', () => {
    const one = filesWith('couples.csv', 'Zn^2+(aq) + 2e^-', 'Zn^2+(aq) + 3e^-').get('couples.csv')!;
    const files = new Map(FILES)
      .set('couples.csv', one.replace('0.7996', 'x'))
      .set('atomic-masses.csv', FILES.get('atomic-masses.csv')!.replace('35.45,35.5', '35.45,35.4'));
    const faults = faultsOf(files);
    expect(faults.map(({ place }) => `${place.file}:${place.line}`)).toEqual([
      `atomic-masses.csv:${lineOf('atomic-masses.csv', '35.45')}`,
      `couples.csv:${lineOf('couples.csv', 'Zn^2+(aq) + 2e^-')}`,
      `couples.csv:${lineOf('couples.csv', '0.7996')}`,
      ...faults.slice(3).map(({ place }) => `${place.file}:${place.line}`),
    ]);
  });

  it('is refused when a column is missing, unknown or doubled', () => {
    const header = FILES.get('couples.csv')!.split('\n')[0]!;
    const codes = (to: string) => faultsOf(filesWith('couples.csv', header, to)).map((fault) => fault.code);
    expect(codes(header.replace('source', 'sauce'))).toEqual(expect.arrayContaining(['missing-column', 'unknown-column']));
    expect(codes(header.replace('note', 'source'))).toEqual(expect.arrayContaining(['missing-column', 'doubled-column']));
  });

  it('is refused when a file is missing or empty', () => {
    const without = new Map(FILES);
    without.delete('speciations.csv');
    expect(faultsOf(without).map((fault) => fault.code)).toContain('missing-file');
    expect(faultsOf(new Map(FILES).set('speciations.csv', '')).map((fault) => fault.code)).toContain('empty-file');
  });

  it('is refused when a quote is never closed or JSON is broken', () => {
    expect(faultsOf(filesWith('couples.csv', '"OpenStax Chemistry 2e, Appendix L"', '"OpenStax')).length).toBeGreaterThan(0);
    const broken = filesWith('misconceptions.json', '"reasoning":', 'reasoning:');
    expect(faultsOf(broken)).toMatchObject([
      { code: 'bad-json', place: { file: 'misconceptions.json', line: lineOf('misconceptions.json', '"reasoning":') } },
    ]);
  });

  it('never crashes on text that is no data file', () => {
    for (const name of FILES.keys()) {
      for (const text of ['\u0000', 'a,b\n"', '{}', '[]', 'null', ',,,\n,,,', '""', '\uFEFF']) {
        expect(() => parseTables(new Map(FILES).set(name, text)), `${name}: ${JSON.stringify(text)}`).toThrow(Faults);
      }
    }
  });
});
