import { describe, expect, it } from 'vitest';
import { react } from '../../src/chemistry/react.ts';
import { Rational } from '../../src/exact/rational.ts';
import { asChoice } from '../../src/questions/choice.ts';
import { buildLadder } from '../../src/questions/families/stepwise-build.ts';
import { ladderFrom } from '../../src/questions/families/stepwise-ladder.ts';
import type { Ask } from '../../src/questions/family.ts';
import { tables } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('stepwise-reduction');
const caution = { substance: 's', caution: 'c', signal: 'none', statements: [], source: 's', fromMemory: false } as const;

/** A vanadium species with an excess of a reducing agent, as the engine has it. */
function ladder(from: string, by: string, ask: Ask) {
  const [start, reagent] = [tables.speciesOf(from).formula, tables.couple(by)];
  const mixture = react(
    {
      reactants: [
        { formula: start, amount: Rational.one },
        { formula: reagent.reduced, amount: 'excess' },
      ],
      medium: 'acid',
      values: 'printed',
    },
    tables.couples,
    tables.facts,
  );
  const found = ladderFrom(mixture, { start, reagent, isReduction: true }, tables)!;
  return buildLadder({ ladder: found, decoys: [], cautions: [caution] }, tables, ask, words);
}

const optionsOf = (from: string, by: string) => {
  const { item, choice } = ladder(from, by, asking('core', 'choice'));
  return asChoice(item, choice!)!.parts[0]!.options!.map(({ value, slip }) => [
    value.kind === 'species' ? answerOf(value.formula) : '',
    slip,
  ]);
};
const answerOf = (formula: object) => [...tables.species.values()].find((each) => sameUnits(each.formula, formula))!.key;
const sameUnits = (one: object, other: object) =>
  JSON.stringify({ ...one, state: undefined }) === JSON.stringify({ ...other, state: undefined });

// Figures by hand from the printed values: VO₂⁺/VO²⁺ +1.00 V, VO²⁺/V³⁺ +0.34 V, V³⁺/V²⁺ −0.26 V, V²⁺/V −1.19 V, Zn²⁺/Zn −0.76 V,
// Fe³⁺/Fe²⁺ +0.77 V. First step with zinc 1.00 + 0.76 = 1.76 V; the step not taken −1.19 + 0.76 = −0.43 V. Added 0.24, signs left out
// 0.24, turned round −1.76, the vanadium value doubled 2.00 + 0.76 = 2.76 V.

describe('dioxidovanadium(V) with an excess of zinc', () => {
  const item = checked(ladder('VO2^+', 'Zn^2+/Zn', asking('core')));
  const rest = ['c: 1/1', 'd: 2/2', 'e: 2/2'];

  it('goes to vanadium(II), through blue and green', () => {
    expect(answerAt(item, 'emf-1')).toBe('+1.76 V');
    expect(answerAt(item, 'equation')).toBe('2VO2^+ + 4H^+ + Zn -> 2VO^2+ + 2H2O + Zn^2+');
    expect(answerAt(item, 'final')).toBe('V^2+');
    expect(answerAt(item, 'stop-emf')).toBe('−0.43 V');
    expect(answerAt(item, 'colours')).toBe('yellow, blue, green, violet');
  });

  it.each([
    ['EP-ADD', ['a: +0.24 V; 0/1', 'b: 2/2', ...rest]],
    ['EP-REVERSED', ['a: −1.76 V; 0/1', 'b: 2/2', ...rest]],
    ['EP-MULTIPLIED', ['a: +2.76 V; 0/1', 'b: 2/2', ...rest]],
    ['HE-ADD-UNSCALED', ['a: 1/1', 'b: VO2^+ + 2H^+ + Zn -> VO^2+ + H2O + Zn^2+; 1/2', ...rest]],
    // Two colours, both right as far as they go: the two between are missing.
    // The value for the next step from there is rightly worked, 0.34 + 0.76 = 1.10 V, but is no reason to stop.
    ['LD-STOPS-EARLY', ['a: 1/1', 'b: 2/2', 'c: VO^2+; 0/1', 'd: +1.10 V; VO^2+; 1/2', 'e: yellow, blue; 1/2']],
    // The colours between are right, whatever is thought to follow.
    ['LD-GOES-TOO-FAR', ['a: 1/1', 'b: 2/2', 'c: V; 0/1', 'd: none; 0/2', 'e: yellow, blue, green, violet, colourless; 2/2']],
    // Yellow, green, blue is what is seen while yellow and blue are both there: no error can be told from it.
    ['LD-COLOURS-SWAPPED', []],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });

  it('can be taken to stop early, not to start, or to go too far', () => {
    expect(optionsOf('VO2^+', 'Zn^2+/Zn')).toEqual([
      ['V^2+', undefined],
      ['VO^2+', 'LD-STOPS-EARLY'],
      ['VO2^+', 'EP-STRENGTH-REVERSED'],
      ['V', 'LD-GOES-TOO-FAR'],
    ]);
  });
});

describe('the same at stretch', () => {
  it('loses the steps that are not seen, and earns what follows rightly from the species reached', () => {
    expect(marked(checked(ladder('VO2^+', 'Zn^2+/Zn', asking('stretch'))), 'LD-STOPS-EARLY')).toEqual([
      'a: VO^2+; 1/4',
      'b: +1.10 V; VO^2+; 1/2',
      'c: 2VO2^+ + 4H^+ + Zn -> 2VO^2+ + 2H2O + Zn^2+; 2/2',
      'd: yellow, blue; 1/2',
    ]);
  });
});

describe('oxidovanadium(IV)', () => {
  it('with zinc has colours that can be told apart when they change places', () => {
    const marks = marked(checked(ladder('VO^2+', 'Zn^2+/Zn', asking('core'))), 'LD-COLOURS-SWAPPED');
    expect(marks.at(-1)).toBe('e: blue, violet, green; 0/2');
  });

  // With coloured chromium(II) oxidation numbers are asked: +4, and +2 at the end.
  const item = checked(ladder('VO^2+', 'Cr^3+/Cr^2+', asking('core')));
  it.each([
    ['LD-STOPS-EARLY', 'e: +4; +3; 2/2'],
    ['ON-ION-CHARGE', 'e: +2; +2; 1/2'],
  ])('shows both oxidation numbers where one differs (%s)', (slip, last) => {
    expect(marked(item, slip).at(-1)).toBe(last);
  });
});

describe('dioxidovanadium(V) with an excess of iron(II)', () => {
  it('takes one step, and can still be asked as a choice', () => {
    expect(optionsOf('VO2^+', 'Fe^3+/Fe^2+')).toEqual([
      ['VO^2+', undefined],
      ['VO2^+', 'EP-STRENGTH-REVERSED'],
      ['V^3+', 'LD-GOES-TOO-FAR'],
    ]);
  });

  it('stops because the next step has a negative potential: 0.34 − 0.77 = −0.43 V', () => {
    expect(answerAt(checked(ladder('VO2^+', 'Fe^3+/Fe^2+', asking('stretch'))), 'stop-emf')).toBe('−0.43 V');
  });
});
