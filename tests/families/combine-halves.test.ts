import { describe, expect, it } from 'vitest';
import { asChoice } from '../../src/questions/choice.ts';
import type { CombineDraw } from '../../src/questions/families/combine-halves.ts';
import { buildCombination } from '../../src/questions/families/combine-halves-build.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import { tables } from '../support/data.ts';
import { answerAt, asking, checked, marked, wordsOf } from './reading.ts';

const words = wordsOf('combine-halves');
const drawn = (oxidant: string, reductant: string, given: CombineDraw['given']): CombineDraw => ({
  pair: { oxidant: tables.couple(oxidant), reductant: tables.couple(reductant), medium: 'acid' },
  oxidantFirst: true,
  given,
});

const iron = drawn('MnO4^-/Mn^2+', 'Fe^3+/Fe^2+', 'as reductions');
const sulfur = drawn('Cr2O7^2-/Cr^3+', 'SO4^2-/SO2', 'with potentials');

describe('marking two half-equations printed as reductions', () => {
  const item = checked(buildCombination(iron, tables, asking('core'), words));

  it('gives the answers', () => {
    expect(answerAt(item, 'factors')).toBe('1 5');
    expect(answerAt(item, 'equation')).toBe('MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+');
    expect(answerAt(item, 'agent')).toBe('MnO4^-');
  });

  it('gives no mark for balance to an equation that does not balance, whatever factors it follows from', () => {
    expect(marked(item, 'HE-ADD-UNSCALED')).toEqual([
      'a: 1 1; 0/1',
      'b: MnO4^- + 8H^+ + Fe^2+ -> Mn^2+ + 4H2O + Fe^3+; 1/2',
      'c: 1/1',
    ]);
    expect(marked(item, 'HE-SCALE-OWN')).toEqual([
      'a: 5 1; 0/1',
      'b: 5MnO4^- + 40H^+ + Fe^2+ -> 5Mn^2+ + 20H2O + Fe^3+; 1/2',
      'c: 1/1',
    ]);
  });

  it('gives nothing for an equation in which nothing is oxidised', () => {
    expect(marked(item, 'HE-NOT-REVERSED')).toEqual([
      'a: 1/1',
      'b: MnO4^- + 8H^+ + 10e^- + 5Fe^3+ -> Mn^2+ + 4H2O + 5Fe^2+; 0/2',
      'c: 1/1',
    ]);
  });

  it('takes the one mark for the agents changed over', () => {
    expect(marked(item, 'RX-AGENT-SWAP')).toEqual(['a: 1/1', 'b: 2/2', 'c: Fe^2+; 0/1']);
  });
});

describe('marking two half-equations with their potentials', () => {
  const item = checked(buildCombination(sulfur, tables, asking('stretch'), words));

  it('gives the answers', () => {
    expect([answerAt(item, 'direction'), answerAt(item, 'agent')]).toEqual(['A', 'Cr2O7^2-']);
    // 14H+ on the left less 3 × 4H+ on the right; 7H2O on the right less 3 × 2H2O on the left
    expect(answerAt(item, 'equation')).toBe('Cr2O7^2- + 2H^+ + 3SO2 -> 2Cr^3+ + H2O + 3SO4^2-');
    expect(answerAt(item, 'electrons')).toBe('6');
  });

  it('takes one mark for what is left on both sides', () => {
    expect(marked(item, 'HE-H-NOT-CANCELLED')[1]).toBe(
      'b: Cr2O7^2- + 14H^+ + 3SO2 + 6H2O -> 2Cr^3+ + 7H2O + 3SO4^2- + 12H^+; 2/3',
    );
  });

  it('lets a wrong direction carry on', () => {
    expect(marked(item, 'EP-STRENGTH-REVERSED')).toEqual([
      'a: B; SO4^2-; 1/2',
      'b: 3SO4^2- + 2Cr^3+ + H2O -> 3SO2 + Cr2O7^2- + 2H^+; 3/3',
      'c: 1/1',
    ]);
  });

  it('takes wrong factors and what does not balance for them in one part', () => {
    expect(marked(item, 'HE-ADD-UNSCALED')[1]).toBe('b: Cr2O7^2- + 10H^+ + SO2 -> 2Cr^3+ + 5H2O + SO4^2-; 1/3');
  });

  it('counts electrons of the whole equation', () => {
    expect(marked(item, 'EP-N-OF-ONE-HALF')[2]).toBe('c: 2; 0/1');
    expect(marked(item, 'RX-COEFFICIENT-ELECTRONS')[2]).toBe('c: 3; 0/1');
  });
});

const optionsOf = (draw: CombineDraw, level: 'core' | 'stretch') => {
  const { item, choice } = buildCombination(draw, tables, asking(level, 'choice'), words);
  return asChoice(item, choice!)!.parts[0]!;
};

it('offers the equation the other way round where the direction is to be found', () => {
  const part = optionsOf(sulfur, 'stretch');
  expect(part.options!.map(({ slip }) => slip ?? 'key')).toEqual([
    'key',
    'EP-STRENGTH-REVERSED',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
  ]);
});

it('never offers the right equation with something left on both sides, which is true', () => {
  // 2VO2+ + SO2 -> 2VO2+ + SO4^2-: with equal electrons an untidy sum was the next option
  const part = optionsOf(drawn('VO2^+/VO^2+', 'SO4^2-/SO2', 'with potentials'), 'stretch');
  expect(part.choice!.pool.map(({ slip }) => slip)).not.toContain('HE-H-NOT-CANCELLED');
});

it.each([
  ['Br2/Br^-', ''],
  ['Ag^+/Ag', ''],
  ['Fe^3+/Fe^2+', ', or the element without its charge'],
  ['MnO4^-/Mn^2+', ', or only an element that is part of the ion or molecule'],
])('does not call %s an element where it is one', (oxidant, added) => {
  const item = checked(buildCombination(drawn(oxidant, 'Zn^2+/Zn', 'as reductions'), tables, asking('core'), words));
  expect(plainText(item.parts.at(-1)!.points[0]!.refuse[0]!)).toBe(`\u25a1${added}`);
});

it('offers four equations, one of them right', () => {
  const part = optionsOf(iron, 'core');
  expect(part.options!.map(({ slip }) => slip ?? 'key')).toEqual(['key', 'HE-ADD-UNSCALED', 'HE-SCALE-OWN', 'HE-NOT-REVERSED']);
});
