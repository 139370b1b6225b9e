import { coefficientOf } from '../../chemistry/terms.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { numberValue } from '../number-step.ts';
import type { Answering, Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { wordsValue } from '../statement-step.ts';
import { type CombineFacts, cancelling, type Leftover } from './combine-halves-facts.ts';
import { directionValue, factorsValue, NEITHER_TURNED, ON_BOTH_SIDES } from './combine-halves-steps.ts';

const NAMES: Readonly<Record<Leftover, string>> = { 'H^+': 'hydrogen ions', 'OH^-': 'hydroxide ions', H2O: 'water' };

/**
 * Slips, the most common first: factors, cancelling, direction, agents, electrons. Where options are made of them, a wrong direction stands
 * first, since the potentials are there to be read.
 */
export function combineSlips(facts: CombineFacts, tables: Tables, words: Words, answering: Answering): Slip[] {
  const { drawn, halves } = facts;
  const leftovers = cancelling(facts);
  const slip = slipMaker(tables, words, { leftovers: leftovers.map((key) => NAMES[key]).join(' and ') });
  const potential = drawn.given === 'with potentials' ? potentialSlips(facts, slip, words) : [];
  const [one, two] = halves.map(({ couple }) => couple.half.electrons) as [Rational, Rational];
  const [direction, counting] = [potential.slice(0, 1), potential.slice(1)];
  return [
    ...(answering === 'choice' ? direction : []),
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
      () => leftovers.length > 0,
    ),
    ...(drawn.given === 'as they run' ? [] : [notReversed(slip)]),
    ...(answering === 'choice' ? [] : direction),
    ...counting,
    slip('RX-AGENT-SWAP', 'agent', () => ({ kind: 'species', formula: facts.reductant })),
  ];
}

type Maker = ReturnType<typeof slipMaker>;

/** Electrons stand beside electrons and do not cancel: nothing is tidied then. */
function notReversed(slip: Maker): Slip {
  return { ...slip('HE-NOT-REVERSED', 'sides', () => wordsValue(NEITHER_TURNED, [])), skips: ['tidy'] };
}

function potentialSlips({ combined, oxidised, reduced }: CombineFacts, slip: Maker, words: Words): Slip[] {
  const plain = (value: Rational) => numberValue(value, { unit: '' });
  const electrons = [reduced, oxidised].map(({ couple }) => couple.half.electrons).sort((a, b) => a.compare(b));
  return [
    slip('EP-STRENGTH-REVERSED', 'direction', () => directionValue(oxidised, words)),
    slip('RX-COEFFICIENT-ELECTRONS', 'electrons', () => plain(coefficientOf(combined.equation.left, oxidised.couple.reducedKey))),
    slip('EP-N-OF-ONE-HALF', 'electrons', () => plain(electrons[0]!)),
  ];
}
