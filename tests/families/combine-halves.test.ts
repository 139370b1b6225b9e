import { describe, expect, it } from 'vitest';
import { asChoice } from '../../src/questions/choice.ts';
import type { CombineDraw } from '../../src/questions/families/combine-halves.ts';
import { buildCombination } from '../../src/questions/families/combine-halves-build.ts';
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

  it('keeps the mark for the species when the electrons do not match', () => {
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

  it('counts electrons of the whole equation', () => {
    expect(marked(item, 'EP-N-OF-ONE-HALF')[2]).toBe('c: 2; 0/1');
    expect(marked(item, 'RX-COEFFICIENT-ELECTRONS')[2]).toBe('c: 3; 0/1');
  });
});

it('offers four equations, one of them right', () => {
  const { item, choice } = buildCombination(iron, tables, asking('core', 'choice'), words);
  const part = asChoice(item, choice!)!.parts[0]!;
  expect(part.options!.map(({ slip }) => slip ?? 'key')).toEqual(['key', 'HE-ADD-UNSCALED', 'HE-SCALE-OWN', 'HE-NOT-REVERSED']);
});
