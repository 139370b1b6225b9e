import { describe, expect, it } from 'vitest';
import { asChoice } from '../../src/questions/choice.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { buildPrediction } from '../../src/questions/families/predict-reaction-build.ts';
import type { Asked, PairDraw, ShelfDraw } from '../../src/questions/families/predict-reaction-draw.ts';
import type { Ask } from '../../src/questions/family.ts';
import { gate } from '../../src/questions/gate/gate.ts';
import { isMain } from '../../src/questions/main-couple.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { seeds, tables, wording } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('predict-reaction');
const oxidised = (id: string): Asked => ({ couple: tables.couple(id), form: 'oxidised' });
const reduced = (id: string): Asked => ({ couple: tables.couple(id), form: 'reduced' });
const pair = (first: Asked, second: Asked, ask: Ask = asking('core')) =>
  buildPrediction({ shape: 'pair', first, second, medium: 'neutral' } satisfies PairDraw, tables, ask, words);

// Figures by hand from the printed values: Fe³⁺/Fe²⁺ +0.77 V, I₂/I⁻ +0.54 V, Zn²⁺/Zn −0.76 V, Cu²⁺/Cu +0.34 V, Br₂/Br⁻ +1.09 V.

describe('iron(III) with iodide', () => {
  const item = checked(pair(oxidised('Fe^3+/Fe^2+'), reduced('I2/I^-')));

  it('is feasible, with the equation', () => {
    expect(answerAt(item, 'emf')).toBe('+0.23 V');
    expect(answerAt(item, 'verdict')).toBe('yes');
    expect(answerAt(item, 'equation')).toBe('2Fe^3+ + 2I^- -> 2Fe^2+ + I2');
  });

  it.each([
    ['EP-ADD', ['a: +1.31 V; 0/1', 'b: 2/2', 'c: 2/2']],
    ['EP-MULTIPLIED', ['a: +1.00 V; 0/1', 'b: 2/2', 'c: 2/2']],
    ['EP-REVERSED', ['a: −0.23 V; 0/1', 'b: no; 2/2', 'c: I2 + 2Fe^2+ -> 2I^- + 2Fe^3+; 2/2']],
    ['EP-STRENGTH-REVERSED', ['a: 1/1', 'b: no; 1/2', 'c: I2 + 2Fe^2+ -> 2I^- + 2Fe^3+; 2/2']],
    ['EP-WRONG-SPECIES', ['a: 1/1', 'b: 2/2', 'c: I2 + 2Fe^2+ -> 2I^- + 2Fe^3+; 1/2']],
    ['HE-ADD-UNSCALED', ['a: 1/1', 'b: 2/2', 'c: Fe^3+ + 2I^- -> Fe^2+ + I2; 1/2']],
    ['HE-SCALE-OWN', ['a: 1/1', 'b: 2/2', 'c: Fe^3+ + 4I^- -> Fe^2+ + 2I2; 1/2']],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });
});

describe('copper with zinc ions', () => {
  const built = pair(reduced('Cu^2+/Cu'), oxidised('Zn^2+/Zn'));
  const item = checked(built);

  it('is not feasible, and the equation is that of the reverse', () => {
    expect(answerAt(item, 'emf')).toBe('−1.10 V');
    expect(answerAt(item, 'verdict')).toBe('no');
    expect(answerAt(item, 'equation')).toBe('Cu^2+ + Zn -> Cu + Zn^2+');
  });

  it.each([
    ['EP-REVERSED', ['a: +1.10 V; 0/1', 'b: yes; 2/2', 'c: Zn^2+ + Cu -> Zn + Cu^2+; 2/2']],
    ['EP-ADD', ['a: −0.42 V; 0/1', 'b: 2/2', 'c: 2/2']],
    ['EP-SIGN-DROPPED', ['a: +0.42 V; 0/1', 'b: yes; 2/2', 'c: Zn^2+ + Cu -> Zn + Cu^2+; 2/2']],
    ['EP-STRENGTH-REVERSED', ['a: 1/1', 'b: yes; 1/2', 'c: Zn^2+ + Cu -> Zn + Cu^2+; 2/2']],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });

  it('offers each wrong value with the verdict that follows from it', () => {
    const ask = asking('core', 'choice');
    const { item: written, choice } = pair(reduced('Cu^2+/Cu'), oxidised('Zn^2+/Zn'), ask);
    const options = asChoice(written, choice!)!.parts[0]!.options!;
    const keys = options.map(({ value, slip }) => [value.kind === 'words' ? value.key : '', slip]);
    expect(keys).toEqual([
      ['no −1.10', undefined],
      ['yes +1.10', 'EP-REVERSED'],
      ['no −0.42', 'EP-ADD'],
      ['yes +0.42', 'EP-SIGN-DROPPED'],
    ]);
  });
});

describe('two oxidising agents', () => {
  const item = checked(pair(oxidised('Br2/Br^-'), oxidised('Fe^3+/Fe^2+')));

  it('do not react, although the cell of both couples has a positive potential', () => {
    expect(answerAt(item, 'emf')).toBe('+0.32 V');
    expect(answerAt(item, 'verdict')).toBe('no');
    expect(answerAt(item, 'equation')).toBe('Br2 + 2Fe^2+ -> 2Br^- + 2Fe^3+');
  });

  it('earn nothing for a verdict from the cell potential, and the equation stands', () => {
    expect(marked(item, 'EP-WRONG-SPECIES')).toEqual(['a: 1/1', 'b: opposed; yes; 0/2', 'c: 2/2']);
  });

  it('lose only the direction when the equation is turned round', () => {
    expect(marked(item, 'EP-STRENGTH-REVERSED')).toEqual(['a: 1/1', 'b: 2/2', 'c: 2Fe^3+ + 2Br^- -> 2Fe^2+ + Br2; 1/2']);
  });
});

describe('iron(III) against three reagents', () => {
  const [iodide, bromide, copper] = [reduced('I2/I^-'), reduced('Br2/Br^-'), oxidised('Cu^2+/Cu')];
  const draw: ShelfDraw = {
    shape: 'shelf',
    subject: oxidised('Fe^3+/Fe^2+'),
    reacts: iodide,
    unable: bromide,
    alike: copper,
    order: [bromide, copper, iodide],
    medium: 'neutral',
  };
  const item = checked(buildPrediction(draw, tables, asking('stretch'), words));

  it('reacts with iodide, not with bromide and not with copper(II)', () => {
    expect(answerAt(item, 'reagent')).toBe('I^-');
    expect(answerAt(item, 'emf')).toBe('+0.23 V');
    expect(answerAt(item, 'emf-other')).toBe('−0.32 V');
    expect(answerAt(item, 'equation')).toBe('2Fe^3+ + 2I^- -> 2Fe^2+ + I2');
  });

  it.each([
    ['EP-STRENGTH-REVERSED', ['a: Br^-; −0.32 V; 1/2', 'b: −0.23 V; 1/2', 'c: 2Fe^3+ + 2Br^- -> 2Fe^2+ + Br2; 2/2']],
    ['EP-WRONG-SPECIES', ['a: Cu^2+; +0.43 V; 1/2', 'b: missed; 1/2', 'c: 2Fe^3+ + Cu -> 2Fe^2+ + Cu^2+; 1/2']],
    ['EP-ADD', ['a: +1.31 V; 1/2', 'b: 2/2', 'c: 2/2']],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });
});

describe('a half-equation that needs a further species', () => {
  const shelf = (alike: Asked, reacts: Asked): ShelfDraw => ({
    shape: 'shelf',
    subject: reduced('Br2/Br^-'),
    reacts,
    unable: alike,
    alike: reduced('CO2/C2O4^2-'),
    order: [reacts, alike, reduced('CO2/C2O4^2-')],
    medium: 'acid',
  });
  const rulesOn = (draw: ShelfDraw) =>
    gate(buildPrediction(draw, tables, asking('stretch'), words).item, tables).map(({ rule }) => rule);

  it('is barred by the gate where that species is not in the mixture: copper(I) iodide beside bromide', () => {
    expect(rulesOn(shelf(oxidised('Cu^2+/CuI'), oxidised('MnO4^-/Mn^2+')))).toContain('nothing-missing');
  });

  it('is let through where all it needs is the acid', () => {
    expect(rulesOn(shelf(oxidised('Cu^2+/Cu'), oxidised('MnO4^-/Mn^2+')))).not.toContain('nothing-missing');
  });
});

describe('the couple of a species', () => {
  it.each([
    ['Cu^2+/Cu', 'oxidised', true],
    ['Cu^2+/CuI', 'oxidised', false],
    ['Cu^2+/Cu^+', 'oxidised', false],
    ['MnO4^-/Mn^2+', 'oxidised', true],
    ['MnO4^-/MnO4^2-', 'oxidised', false],
    ['MnO2/Mn^2+', 'oxidised', true],
    ['MnO2/Mn^3+', 'oxidised', false],
    ['SO4^2-/S2O3^2-@acid', 'reduced', false],
    ['Mg^2+/Mg', 'oxidised', true],
  ] as const)('%s with its %s form asked about in acid is its main one: %s', (id, form, is) => {
    expect(isMain(tables.couple(id), form, 'acid', tables)).toBe(is);
  });
});

describe('a trap of two agents of one kind', () => {
  it('has no ion that stands between two states, such as iron(II) or lead(II)', () => {
    const family = FAMILIES.find(({ id }) => id === 'predict-reaction')!;
    const traps = seeds(60)
      .map((seed) => makeQuestion(family, slotOf(seed, family.id, 's1', 0), asking('core'), tables, wording))
      .filter(({ features }) => features.shape === 'two of one kind');
    expect(traps.length).toBeGreaterThan(3);
    for (const { identity } of traps) {
      for (const key of identity.split(' with '))
        expect(['Fe^2+', 'Sn^2+', 'Pb^2+', 'VO^2+', 'V^3+', 'Cr^3+', 'Co^2+']).not.toContain(key);
    }
  });
});
