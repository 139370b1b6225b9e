import { describe, expect, it } from 'vitest';
import { asChoice } from '../../src/questions/choice.ts';
import { type HalfDraw, halfEquation } from '../../src/questions/families/half-equation.ts';
import { buildHalf } from '../../src/questions/families/half-equation-build.ts';
import { planOf } from '../../src/questions/families/half-equation-plan.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { tables, wording } from '../support/data.ts';
import { answerAt, asking, checked, marked, plainText, wordsOf } from './reading.ts';

const words = wordsOf('half-equation');

/** A reaction with one of its couples as the harder half-equation. */
function drawn(oxidant: string, reductant: string, medium: 'acid' | 'alkali', main: 'oxidant' | 'reductant'): HalfDraw {
  const pair = { oxidant: tables.couple(oxidant), reductant: tables.couple(reductant), medium };
  const plans = [planOf(pair.oxidant, true, medium), planOf(pair.reductant, false, medium)] as const;
  return main === 'oxidant' ? { pair, main: plans[0], partner: plans[1] } : { pair, main: plans[1], partner: plans[0] };
}

const dichromate = drawn('Cr2O7^2-/Cr^3+', 'I2/I^-', 'acid', 'oxidant');
const hydroxide = drawn('HO2^-/OH^-', 'CrO4^2-/Cr(OH)3', 'alkali', 'reductant');

describe('marking half-equations in acid', () => {
  const item = checked(buildHalf(dichromate, tables, asking('core'), words));

  it('gives the answers', () => {
    expect(answerAt(item, 'partner')).toBe('2I^- -> I2 + 2e^-');
    expect(answerAt(item, 'electrons')).toBe('6');
    expect(answerAt(item, 'half')).toBe('Cr2O7^2- + 14H^+ + 6e^- -> 2Cr^3+ + 7H2O');
  });

  it('asks for oxidation numbers where their change has a mark', () => {
    expect(plainText(item.parts[1]!.prompt)).toContain('from oxidation numbers');
    const [change, electrons] = item.parts[1]!.points;
    expect(change!.refuse.map(plainText)).toEqual(['a right number of electrons without oxidation numbers']);
    expect(electrons!.accept.map(plainText)).toContain('the right number alone');
  });

  it('keeps the mark for the atoms when the electrons are wrong', () => {
    expect(marked(item, 'HE-ELECTRON-SIDE', 'charge')).toEqual([
      'a: 1/1',
      'b: 2/2',
      'c: Cr2O7^2- + 14H^+ -> 2Cr^3+ + 7H2O + 6e^-; 1/2',
    ]);
    expect(marked(item, 'HE-ELECTRONS-MISSING')[2]).toBe('c: Cr2O7^2- + 14H^+ -> 2Cr^3+ + 7H2O; 1/2');
    // one chromium: 3; the charges of the two formulas, −2 and +3: 5; seven oxygen at two each: 14
    expect(marked(item, 'HE-ELECTRONS-PER-ATOM', 'electrons')).toEqual([
      'a: 1/1',
      'b: 3; 1/2',
      'c: Cr2O7^2- + 14H^+ + 3e^- -> 2Cr^3+ + 7H2O; 1/2',
    ]);
    expect(marked(item, 'RX-ION-CHARGE-CHANGE')[1]).toBe('b: 5; 0/2');
    expect(marked(item, 'RX-OXIDE-TRANSFER')[1]).toBe('b: 14; 0/2');
  });

  it('gives nothing for oxygen gas on the right', () => {
    expect(marked(item, 'HE-OXYGEN-GAS')).toEqual(['a: 1/1', 'b: 2/2', 'c: 2Cr2O7^2- + 12e^- -> 4Cr^3+ + 7O2; 0/2']);
  });

  it('sees one electron for two iodide ions', () => {
    expect(marked(item, 'HE-ELECTRONS-PER-ATOM', 'partner-charge')).toEqual(['a: 2I^- -> I2 + e^-; 0/1', 'b: 2/2', 'c: 2/2']);
  });
});

describe('marking half-equations in alkali', () => {
  const item = checked(buildHalf(hydroxide, tables, asking('stretch'), words));

  it('gives the answers', () => {
    expect(answerAt(item, 'partner')).toBe('HO2^- + H2O + 2e^- -> 3OH^-');
    expect(answerAt(item, 'half')).toBe('Cr(OH)3 + 5OH^- -> CrO4^2- + 4H2O + 3e^-');
    expect([answerAt(item, 'falls'), answerAt(item, 'agent')]).toEqual(['O', 'HO2^-']);
  });

  it('refuses hydrogen ions for the atoms alone, since the charge balances with them', () => {
    expect(marked(item, 'HE-H-IN-ALKALI', 'makeup')).toEqual([
      'a: 2/2',
      'b: Cr(OH)3 + H2O -> CrO4^2- + 5H^+ + 3e^-; 2/3',
      'c: 2/2',
    ]);
  });

  it('does so for the half-equation of the partner too', () => {
    // Fe(OH)2 + H2O -> Fe(OH)3 + H+ + e-: charge 0 on the left, +1 − 1 = 0 on the right
    const iron = checked(
      buildHalf(drawn('CrO4^2-/Cr(OH)3', 'Fe(OH)3/Fe(OH)2', 'alkali', 'oxidant'), tables, asking('stretch'), words),
    );
    expect(marked(iron, 'HE-H-IN-ALKALI', 'partner-makeup')[0]).toBe('a: Fe(OH)2 + H2O -> Fe(OH)3 + H^+ + e^-; 1/2');
  });

  it('accepts what rises in the other reactant for what falls', () => {
    const falls = item.parts[2]!.points[0]!;
    expect(plainText(falls.accept[1])).toBe('chromium rises from +3 to +6, so Cr(OH)3 is oxidised, by HO2^-');
  });

  it('takes one mark for the agents changed over', () => {
    expect(marked(item, 'RX-AGENT-SWAP')).toEqual(['a: 2/2', 'b: 3/3', 'c: Cr(OH)3; 1/2']);
  });
});

it('takes oxygen in a peroxide for −2 where that doubles the electrons', () => {
  const item = checked(buildHalf(drawn('MnO4^-/Mn^2+', 'O2/H2O2', 'acid', 'reductant'), tables, asking('core'), words));
  expect(answerAt(item, 'half')).toBe('H2O2 -> O2 + 2H^+ + 2e^-');
  expect(marked(item, 'ON-PEROXIDE')).toEqual(['a: 2/2', 'b: 4; 1/2', 'c: H2O2 -> O2 + 2H^+ + 4e^-; 1/2']);
});

it('offers four half-equations, one of them right', () => {
  const { item, choice } = buildHalf(dichromate, tables, asking('core', 'choice'), words);
  const part = asChoice(item, choice!)!.parts[0]!;
  expect(part.options!.map(({ slip }) => slip ?? 'key')).toEqual([
    'key',
    'HE-ELECTRON-SIDE',
    'RX-ION-CHARGE-CHANGE',
    'HE-ELECTRONS-PER-ATOM',
  ]);
});

it('asks at stretch for no half-equation that a core choice asks for', () => {
  const asked = (level: 'core' | 'stretch') =>
    Array.from({ length: 60 }, (_, at) => {
      const slot = slotOf(`choice ${at}`, 'half-equation', 's1', 0);
      return makeQuestion(halfEquation, slot, asking(level, 'choice'), tables, wording).asks[0]!;
    });
  const [core, stretch] = [new Set(asked('core')), asked('stretch')];
  expect(stretch.filter((fact) => core.has(fact))).toEqual([]);
  // more than a sheet of ten can use up
  expect(core.size).toBeGreaterThan(9);
  expect(new Set(stretch).size).toBeGreaterThan(14);
});
