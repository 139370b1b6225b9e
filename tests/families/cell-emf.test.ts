import { describe, expect, it } from 'vitest';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { asChoice } from '../../src/questions/choice.ts';
import { buildCell } from '../../src/questions/families/cell-emf-build.ts';
import { tables } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('cell-emf');
const cell = (first: string, second: string, level: 'core' | 'stretch' = 'core') =>
  buildCell({ first: tables.couple(first), second: tables.couple(second) }, tables, asking(level), words);

// Figures by hand from the printed values: Ag⁺/Ag +0.80 V, Zn²⁺/Zn −0.76 V, Fe²⁺/Fe −0.44 V.
// Statements are known by the half-cell that is oxidised: `answer-flow B` is the way from B to A.
// 0.80 − (−0.76) = 1.56; added 0.04; turned round −1.56; the silver value doubled 2 × 0.80 + 0.76 = 2.36.

describe('half-cell A of silver with half-cell B of zinc', () => {
  const built = cell('Ag^+/Ag', 'Zn^2+/Zn', 'stretch');
  const item = checked(built);

  it('gives the difference, the equation and the way of electrons and ions', () => {
    expect(answerAt(item, 'emf')).toBe('+1.56 V');
    expect(answerAt(item, 'direction')).toBe('B');
    expect(answerAt(item, 'equation')).toBe('2Ag^+ + Zn -> 2Ag + Zn^2+');
    expect(answerAt(item, 'flow')).toBe('answer-flow B');
    expect(answerAt(item, 'bridge')).toBe('answer-bridge B');
  });

  const whole = ['b: 2/2', 'c: 2/2', 'd: 1/1'];

  it.each([
    ['EP-ADD', ['a: +0.04 V; 0/1', ...whole]],
    ['EP-REVERSED', ['a: −1.56 V; 0/1', ...whole]],
    ['EP-MULTIPLIED', ['a: +2.36 V; 0/1', ...whole]],
    ['HE-ADD-UNSCALED', ['a: 1/1', 'b: Ag^+ + Zn -> Ag + Zn^2+; 1/2', 'c: 2/2', 'd: 1/1']],
    ['HE-SCALE-OWN', ['a: 1/1', 'b: Ag^+ + 2Zn -> Ag + 2Zn^2+; 1/2', 'c: 2/2', 'd: 1/1']],
    ['EP-ELECTRONS-IN-SOLUTION', ['a: 1/1', 'b: 2/2', 'c: through the bridge; 1/2', 'd: 1/1']],
    ['EP-BRIDGE-DIRECTION', ['a: 1/1', 'b: 2/2', 'c: 2/2', 'd: answer-bridge A; 0/1']],
    // The half-cell written first was taken to be oxidised: all that follows is turned round, and right where it carries on.
    [
      'EP-LEFT-IS-ANODE',
      ['a: 1/1', 'b: Zn^2+ + 2Ag -> Zn + 2Ag^+; 1/2', 'c: answer-flow A; answer-why-reversed A; 1/2', 'd: answer-bridge A; 1/1'],
    ],
  ])('%s is marked as a colleague would', (slip, marks) => {
    expect(marked(item, slip)).toEqual(marks);
  });

  it('is asked as a choice between what the slips give, in ascending order', () => {
    const core = cell('Ag^+/Ag', 'Zn^2+/Zn');
    const options = asChoice(checked(core), core.choice!)!.parts[0]!.options!;
    expect(options.map(({ slip }) => slip)).toEqual(['EP-REVERSED', 'EP-ADD', undefined]);
  });

  it('is asked at stretch for the equation, which needs the direction and the factors', () => {
    const options = asChoice(item, built.choice!)!.parts[0]!.options!;
    const told = options.map(({ value, slip }) => [value.kind === 'equation' ? writeEquation(value.equation) : '', slip]);
    expect(told).toEqual([
      ['2Ag^+ + Zn -> 2Ag + Zn^2+', undefined],
      ['Zn^2+ + 2Ag -> Zn + 2Ag^+', 'EP-STRENGTH-REVERSED'],
      ['Ag^+ + Zn -> Ag + Zn^2+', 'HE-ADD-UNSCALED'],
      ['Ag^+ + 2Zn -> Ag + 2Zn^2+', 'HE-SCALE-OWN'],
    ]);
  });
});

describe('two metals of negative potential', () => {
  const item = checked(cell('Fe^2+/Fe', 'Zn^2+/Zn'));

  it('lose a mark only for the value when they are added or stripped of their signs', () => {
    expect(answerAt(item, 'emf')).toBe('+0.32 V');
    expect(marked(item, 'EP-ADD')).toEqual(['a: −1.20 V; 0/1', 'b: 2/2', 'c: 2/2']);
  });

  it('have no line for signs left out, which happens to give the right size', () => {
    expect(marked(item, 'EP-SIGN-DROPPED')).toEqual([]);
  });
});
