import { coefficientOf } from '../../chemistry/terms.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { wordsValue } from '../statement-step.ts';
import { type CombineFacts, cancels } from './combine-halves-facts.ts';
import { directionValue, factorsValue, NEITHER_TURNED, ON_BOTH_SIDES } from './combine-halves-steps.ts';

/** Slips, the most common first: factors, cancelling, direction, agents, electrons. */
export function combineSlips(facts: CombineFacts, tables: Tables, words: Words): Slip[] {
  const { drawn, halves } = facts;
  const slip = slipMaker(tables, words);
  const [one, two] = halves.map(({ couple }) => couple.half.electrons) as [Rational, Rational];
  return [
    slip('HE-ADD-UNSCALED', 'factors', () => factorsValue([Rational.one, Rational.one], words)),
    slip(
      'HE-SCALE-OWN',
      'factors',
      () => factorsValue([one, two], words),
      () => !one.equals(two),
    ),
    slip(
      'HE-H-NOT-CANCELLED',
      'tidy',
      () => wordsValue(ON_BOTH_SIDES, []),
      () => cancels(facts),
    ),
    ...(drawn.given === 'as they run' ? [] : [slip('HE-NOT-REVERSED', 'sides', () => wordsValue(NEITHER_TURNED, []))]),
    ...(drawn.given === 'with potentials' ? potentialSlips(facts, slip, words) : []),
    slip('RX-AGENT-SWAP', 'agent', () => ({ kind: 'species', formula: facts.reductant })),
  ];
}

type Maker = ReturnType<typeof slipMaker>;

function potentialSlips({ combined, oxidised, reduced }: CombineFacts, slip: Maker, words: Words): Slip[] {
  const plain = (value: Rational) => numberValue(value, { unit: '' });
  const electrons = [reduced, oxidised].map(({ couple }) => couple.half.electrons).sort((a, b) => a.compare(b));
  return [
    slip('EP-STRENGTH-REVERSED', 'direction', () => directionValue(oxidised, words)),
    slip('RX-COEFFICIENT-ELECTRONS', 'electrons', () => plain(coefficientOf(combined.equation.left, oxidised.couple.reducedKey))),
    slip('EP-N-OF-ONE-HALF', 'electrons', () => plain(electrons[0]!)),
  ];
}
