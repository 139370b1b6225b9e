import { describe, expect, it } from 'vitest';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { equation, quantity } from '../../src/document/inlines.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { carriesFromSomething } from '../../src/questions/gate/carries-from-something.ts';
import { figuresSuffice } from '../../src/questions/gate/figures-suffice.ts';
import { optionsCouldBeChosen } from '../../src/questions/gate/options-could-be-chosen.ts';
import type { GateRule } from '../../src/questions/gate/rule.ts';
import type { ChoiceOption, Item } from '../../src/questions/question.ts';
import { solve } from '../../src/questions/solve.ts';
import { tables } from '../support/data.ts';
import { smallItem } from './small-item.ts';

const problems = (rule: GateRule, item: Item) => rule.check({ item, tables, values: solve(item), rows: [] });
const withOptions = (...options: ChoiceOption[]): Item => ({ ...smallItem, parts: [{ ...smallItem.parts[0]!, options }] });
const about = { aliases: [], feedback: '' };

const figure = (number: string, plain: string, slip?: string): ChoiceOption => ({
  value: { kind: 'number', value: parseDecimal(plain).value, unit: 'mol' },
  content: [quantity(number, 'mol')],
  ...(slip ? { slip } : {}),
  ...about,
});

const written = (text: string, slip?: string): ChoiceOption => ({
  value: { kind: 'equation', equation: parseEquation(text), arrow: 'forward' },
  content: [equation(parseEquation(text))],
  ...(slip ? { slip } : {}),
  ...about,
});

describe('options', () => {
  it('are figures of a believable size', () => {
    expect(problems(optionsCouldBeChosen, withOptions(figure('1.20', '1.20'), figure('43.2', '43.2', 'S')))).toEqual([]);
    expect(problems(optionsCouldBeChosen, withOptions(figure('1.20', '1.20'), figure('44.5', '44.5', 'S')))).toHaveLength(1);
    expect(problems(optionsCouldBeChosen, withOptions(figure('1.20', '1.20'), figure('0.0324', '0.0324', 'S')))).toHaveLength(1);
  });

  it('stand in one notation', () => {
    const mixed = withOptions(figure('0.00173', '0.00173'), figure('2.88 × 10^-4', '0.000288', 'S'));
    expect(problems(optionsCouldBeChosen, mixed)).toEqual(['options stand in two notations']);
  });

  it('hold no second equation that is true', () => {
    const key = written('2VO2^+ + SO2 -> 2VO^2+ + SO4^2-');
    const untidy = written('2VO2^+ + 4H^+ + SO2 + 2H2O -> 2VO^2+ + 2H2O + SO4^2- + 4H^+', 'S');
    const reversed = written('2VO^2+ + SO4^2- -> 2VO2^+ + SO2', 'T');
    expect(problems(optionsCouldBeChosen, withOptions(key, untidy))).toHaveLength(1);
    expect(problems(optionsCouldBeChosen, withOptions(key, reversed))).toEqual([]);
  });
});

describe('data', () => {
  it('have as many significant figures as are asked of the answer', () => {
    expect(problems(figuresSuffice, smallItem)).toEqual([]);
    const [first, ...rest] = smallItem.data;
    const coarse = { ...smallItem, data: [{ ...first!, printed: { sf: 2 } }, ...rest] };
    expect(problems(figuresSuffice, coarse)).toContain('`c` has 2 significant figures, the answer to `x` has 3');
  });
});

describe('a mark that carries on', () => {
  it('rests on something that was written before it', () => {
    expect(problems(carriesFromSomething, smallItem)).toEqual([]);
    const [a, b] = smallItem.parts;
    const first = { ...a!, points: [{ ...a!.points[0]!, carries: true }] };
    expect(problems(carriesFromSomething, { ...smallItem, parts: [first, b!] })).toHaveLength(1);
  });
});
