import { describe, expect, it } from 'vitest';
import type { Couple } from '../../src/chemistry/couple.ts';
import type { Mixture } from '../../src/chemistry/mixture.ts';
import { averageOxidationNumber } from '../../src/chemistry/oxidation-numbers.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { react } from '../../src/chemistry/react.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { tables } from '../chemistry/tables.ts';
import { checkedCases } from './left-out.ts';

interface Start {
  readonly reductant?: string;
  readonly E_reductant_V?: number;
  readonly E_vanadium_V?: Readonly<Record<string, number>>;
}
interface End {
  readonly stops_at?: string;
  readonly product?: string;
  readonly sequence?: readonly string[];
}
const ladders = checkedCases<Start, End>('ladder');

const mix = (subject: string, other: string, couples: readonly Couple[] = tables.couples): Mixture =>
  react(
    {
      reactants: [
        { formula: parseFormula(subject), amount: Rational.one },
        { formula: parseFormula(other), amount: 'excess' },
      ],
      medium: 'acid',
      values: 'stored',
    },
    couples,
    tables.facts,
  );
const reached = (mixture: Mixture) => mixture.steps.filter((step) => step.from !== 'Zn').at(-1)!.to;

describe('published ladders', () => {
  const vanadium: Readonly<Record<string, string>> = {
    'V5/V4': 'VO2^+/VO^2+',
    'V4/V3': 'VO^2+/V^3+',
    'V3/V2': 'V^3+/V^2+',
    'V2/V0': 'V^2+/V',
  };
  it.each(ladders.filter((each) => each.given.E_vanadium_V))(
    'with given potentials end where ours do: $id, $source',
    ({ given, answer }) => {
      const [, species, id] = /^(\S+) \((\S+)\)$/.exec(given.reductant!)!;
      const values = new Map(Object.entries(given.E_vanadium_V!).map(([rung, volts]) => [vanadium[rung]!, volts]));
      const caret = (text: string) => text.replace(/(\d?[+-])(?=$|\/)/g, '^$1');
      values.set(id!.split('/').map(caret).join('/'), given.E_reductant_V!);
      const couples = tables.couples.map((couple) => {
        const volts = values.get(couple.id);
        return volts === undefined ? couple : { ...couple, stored: parseDecimal(String(volts)) };
      });
      const end = reached(mix('VO2^+', species!, couples));
      expect(`+${averageOxidationNumber(parseFormula(end), 'V')}`).toBe(answer.stops_at);
    },
  );

  it('of vanadium with zinc goes yellow, blue, green, violet', () => {
    const { answer } = ladders.find((each) => each.id === 'uw-v-zn')!;
    const mixture = mix('VO2^+', 'Zn');
    const rungs = ['VO2^+', ...mixture.steps.map((step) => step.to)];
    const words = (key: string) => [tables.speciesOf(key).colour!.word, ...tables.speciesOf(key).colour!.accepted];
    expect(rungs.map((key, at) => words(key).includes(answer.sequence![at]!))).toEqual([true, true, true, true]);
    expect(answer.stops_at).toContain(rungs.at(-1));
  });

  it('of vanadium has the published colours', () => {
    const { answer } = ladders.find((each) => each.id === 'oh-v-colours')!;
    const keys: Readonly<Record<string, string>> = { '+5': 'VO2^+', '+4': 'VO^2+', '+3': 'V^3+', '+2': 'V^2+' };
    for (const [state, colours] of Object.entries(answer as Record<string, string>)) {
      const colour = tables.speciesOf(keys[state]!).colour!;
      expect(colours.split('/').some((word) => [colour.word, ...colour.accepted].includes(word))).toBe(true);
    }
  });

  it('of chromium(III) with zinc ends at chromium(II)', () => {
    const { answer } = ladders.find((each) => each.id === 'os-cr-zn')!;
    expect(reached(mix('Cr^3+', 'Zn'))).toBe(answer.product);
  });

  it('of manganate(VII) with sulfur dioxide in acid ends at manganese(II)', () => {
    const { answer } = ladders.find((each) => each.id === 'wf-mn-Mn2p')!;
    expect(reached(mix('MnO4^-', 'SO3^2-'))).toBe(answer.product);
  });

  it('are all looked at', () => {
    expect(ladders.map((each) => each.id)).toEqual([
      'der-v-Cd',
      'der-v-Cr2',
      'der-v-I',
      'oh-v-colours',
      'os-cr-zn',
      'uw-v-zn',
      'wf-mn-Mn2p',
    ]);
  });
});
