import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet, emptyFolder } from './run-couplet.ts';

describe('couplet react', () => {
  it('prints steps, what is left, and what goes on beside, as one object of this shape', async () => {
    const { status, stdout, stderr } = await couplet(['react', 'Cr2O7^2-', 'Zn', '--excess', 'Zn', '--json']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const found = JSON.parse(stdout);
    expect(found.steps).toEqual([
      {
        equation: 'Cr2O7^2- + 14H^+ + 3Zn -> 2Cr^3+ + 7H2O + 3Zn^2+',
        emf: '2.0918',
        from: 'Cr2O7^2-',
        to: 'Cr^3+',
        colourBefore: 'orange',
        colourAfter: 'green',
      },
      {
        equation: '2Cr^3+ + Zn -> 2Cr^2+ + Zn^2+',
        emf: '0.3548',
        from: 'Cr^3+',
        to: 'Cr^2+',
        colourBefore: 'green',
        colourAfter: 'blue',
      },
    ]);
    expect(found.final).toEqual([
      { species: 'Zn', amount: 'excess', colour: 'grey' },
      { species: 'Zn^2+', amount: '4', colour: 'colourless' },
      { species: 'Cr^2+', amount: '2', colour: 'blue' },
    ]);
    expect(found.parallel[0]).toEqual({ equation: '2H^+ + Zn -> H2 + Zn^2+', emf: '0.7618', because: expect.any(String) });
    expect(found.notes.join('\n')).toContain('It goes no further: for Cr^2+ to Cr with Zn');
  });

  /** Known results: chemistry that every course teaches. */
  it.each([
    [['VO2^+', 'Zn', '--excess', 'Zn'], 'V^2+'],
    [['VO2^+', 'Sn', '--excess', 'Sn'], 'V^3+'],
    [['VO2^+', 'Fe^2+', '--excess', 'Fe^2+'], 'VO^2+'],
    [['VO2^+', 'I^-', '--excess', 'I^-'], 'VO^2+'],
    [['Cr2O7^2-', 'Fe^2+', '--excess', 'Fe^2+'], 'Cr^3+'],
    [['MnO4^-', 'SO2', '--excess', 'SO2'], 'Mn^2+'],
  ])('%j ends at %s', async (args, end) => {
    expect((await jsonOf('react', ...args)).steps.at(-1).to).toBe(end);
  });

  it('shows the colours of the vanadium ladder one after the other', async () => {
    const { steps } = await jsonOf('react', 'VO2^+', 'Zn', '--excess', 'Zn');
    const seen = [steps[0].colourBefore, ...steps.map(({ colourAfter }: { colourAfter: string }) => colourAfter)];
    expect(seen).toEqual(['yellow', 'blue', 'green', 'violet']);
  });

  it('counts exactly, in fractions where it must', async () => {
    const { final } = await jsonOf('react', 'Cr2O7^2-', 'Fe^2+', '--amount', 'Fe^2+=2');
    expect(final).toContainEqual({ species: 'Cr2O7^2-', amount: '2/3', colour: 'orange' });
    expect(final).toContainEqual({ species: 'Cr^3+', amount: '2/3', colour: 'green' });
  });

  it('waits for the condition that a slow pair needs', async () => {
    const cold = await jsonOf('react', 'MnO4^-', 'C2O4^2-');
    expect(cold.steps).toEqual([]);
    expect(cold.notes.join('\n')).toContain('--given warm');
    const warm = await jsonOf('react', 'MnO4^-', 'C2O4^2-', '--given', 'warm');
    expect(warm.steps[0].equation).toBe('2MnO4^- + 16H^+ + 5C2O4^2- -> 2Mn^2+ + 8H2O + 10CO2');
  });

  it('takes substances from the shelf as their ions, hydrated or not', async () => {
    for (const salt of ['FeSO4·7H2O', 'FeSO4']) {
      const { final } = await jsonOf('react', 'KMnO4', salt, '--amount', `${salt}=5`);
      expect(final).toContainEqual({ species: 'Fe^3+', amount: '5', colour: 'yellow-brown' });
      expect(final).toContainEqual({ species: 'SO4^2-', amount: '5', colour: 'colourless' });
    }
  });

  it('answers what a class would not do, headed by the reason', async () => {
    const text = await textOf('react', 'MnO4^-', 'Cl^-', 'Fe^2+');
    expect(text).toMatch(/^Not to be put together in a class: chloride ions are oxidised to chlorine/);
    expect(text).toContain('MnO4^- + 8H^+ + 5Fe^2+');
  });

  it('tells each step with its two potentials and why it stops', async () => {
    const text = await textOf('react', 'VO2^+', 'Sn', '--excess', 'Sn');
    for (const piece of [
      'VO2^+ (1 mol) and Sn (in excess), in acid',
      '1. VO2^+ is reduced to VO^2+; Sn is oxidised to Sn^2+.',
      'E°cell = E°(VO2^+/VO^2+) − E°(Sn^2+/Sn) = +1.00 − (−0.1375) = +1.1375 V',
      'VO2^+ is yellow, VO^2+ is blue; Sn is silvery, Sn^2+ is colourless.',
      'Why it stops:',
      'for V^3+ to V^2+ with Sn, E°cell = E°(V^3+/V^2+) − E°(Sn^2+/Sn) = −0.26 − (−0.1375) = −0.1225 V, which is negative',
      'Potentials are those stored in the table in force (default)',
    ])
      expect(text).toContain(piece);
  });

  it('follows a department’s own table', async () => {
    const own = join(emptyFolder(), 'own.csv');
    writeFileSync(own, 'half-equation,E° / V\nV^3+ + e^- -> V^2+,0.10\n');
    expect((await jsonOf('react', 'VO2^+', 'Sn', '--excess', 'Sn', '--table', own)).steps.at(-1).to).toBe('V^2+');
    expect(await textOf('react', 'VO2^+', 'Sn', '--excess', 'Sn', '--table', own)).toContain('(default + own.csv)');
  });

  it('tells of hydrogen beside the steps, and of none where none is seen', async () => {
    expect((await jsonOf('react', 'Zn', '--medium', 'alkali')).parallel[0].equation).toContain('-> H2 + [Zn(OH)4]^2-');
    expect((await jsonOf('react', 'SO3^2-', '--medium', 'alkali')).parallel).toEqual([]);
  });

  it('stops when the acid is used up', async () => {
    const found = await jsonOf('react', 'MnO4^-', 'Fe^2+', '--excess', 'Fe^2+', '--amount', 'H^+=4');
    expect(found.final).toContainEqual({ species: 'MnO4^-', amount: '0.5', colour: 'purple' });
    expect(found.notes.join('\n')).toContain('The H^+ is used up.');
  });

  it.each([
    [['Fe^2+', 'Qq'], 'no element has the symbol `Qq`'],
    [['Fe^2+', 'U^4+'], 'nothing is known of `U^4+`'],
    [['Zn', 'Cu^2+', '--excess', 'Fe'], 'expected an amount or an excess of a reactant (`Zn`, `Cu^2+`), found `Fe`'],
    [['Zn', 'Cu^2+', '--amount', 'Zn=1', '--excess', 'Zn'], 'with an amount or in excess, found both'],
    [['Zn', 'Cu^2+', '--excess', 'Zn,Cu^2+'], 'are all in excess: give an amount of one of them'],
    [['Zn', 'OH^-'], 'makes the mixture alkali'],
    [['Zn', 'Cu^2+', '--amount', 'Zn'], 'expected a species, `=` and a number'],
    [['Zn', 'Cu^2+', '--given', 'hot'], 'after `--given`, expected warm, time'],
  ])('tells what is wrong with %j', async (args, said) => {
    const { status, stdout, stderr } = await inProcess(['react', ...args]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(said);
  });
});
