import { elementOf } from '../../chemistry/elements.ts';
import { COUNTS } from '../../chemistry/oxidation-data.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import { type Account, numberFrom } from '../oxidation-account.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Level, Part } from '../question.ts';
import { showNumber } from '../show-value.ts';
import type { NumberDraw } from './oxidation-number.ts';
import type { Wanted } from './oxidation-number-species.ts';
import { numberAt } from './oxidation-number-steps.ts';
import { averagePart, electronsPart } from './oxidation-number-stretch-parts.ts';

const plain = { maths: 0, practical: 0 } as const;

/** The written parts, least demanding first. */
export function numberParts(drawn: NumberDraw, level: Level, context: WordsContext, words: Words): Part[] {
  return level === 'core'
    ? [speciesPart(drawn, level, words), reducedPart(drawn, context, words), agentPart(drawn, 'c', context, words)]
    : [
        speciesPart(drawn, level, words),
        averagePart(drawn, context, words),
        electronsPart(drawn, context, words),
        agentPart(drawn, 'd', context, words),
      ];
}

const signed = (value: Parameters<typeof showNumber>[0]) => quantity(showNumber(value, 'exact', true), '');

function speciesPart({ wanted }: NumberDraw, level: Level, words: Words): Part {
  return {
    id: 'a',
    command: level === 'core' ? 'Give' : 'Deduce',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline(level === 'core' ? 'species' : 'species-stretch'),
    hints: [words.inline(level === 'core' ? 'species-hint' : 'species-hint-stretch')],
    space: { kind: 'short', labels: wanted.map((each) => labelOf(each, words)) },
    points: wanted.map((each, at) =>
      valuePoint({
        step: numberAt(at),
        earns: words.inline('point-number', {
          number: signed(numberFrom(each.account)),
          element: each.name,
          formula: species(each.formula),
        }),
        also: alsoFor(each, words),
        refuse: at === 0 ? [words.inline('refuse-sign-anywhere')] : [],
      }),
    ),
    answers: wanted.map((_, at) => numberAt(at)),
  };
}

/** `chromium in Cr₂O₇²⁻`; `iron in Fe₃O₄ (average)` where no atom need have the number. */
function labelOf({ name, formula, states }: Wanted, words: Words): Inline[] {
  return words.inline('label-number', { element: name, formula: species(formula), isAverage: states !== undefined });
}

/** Parts of averages that occur, as one character. */
const VULGAR: Readonly<Record<string, string>> = { '1/2': '\u00bd', '1/3': '\u2153', '2/3': '\u2154' };

/** Fractions may be written in several ways; who tells the atoms apart knows more than was asked. */
function alsoFor({ account, states = [] }: Wanted, words: Words): Inline[][] {
  const [one, other] = states.map(({ atoms, number }) =>
    words.inline('state', { number: signed(Rational.of(number)), count: COUNTS[atoms]!, isOne: atoms === 1 }),
  );
  const told = one && other ? [words.inline('also-states', { one, other })] : [];
  return [...fractionsFor(account, words), ...told];
}

function fractionsFor(account: Account, words: Words): Inline[][] {
  const value = numberFrom(account);
  if (value.isInteger()) return [];
  const whole = value.n / value.d;
  const mixed = `+${whole}${VULGAR[`${value.n - whole * value.d}/${value.d}`]}`;
  const other = value.d === 2n ? `+${value.n}/${value.d}` : `+${showNumber(value, { dp: 2 })}`;
  return [words.inline('also-fraction', { mixed, other })];
}

function reducedPart({ reaction }: NumberDraw, context: WordsContext, words: Words): Part {
  const [before, after] = [numberFrom(reaction.before.account), numberFrom(reaction.after.account)].map(signed);
  return {
    ...plain,
    id: 'b',
    command: 'Deduce',
    objective: 'application',
    prompt: words.inline('reduced', context),
    hints: [words.inline('reduced-hint')],
    space: { kind: 'short', labels: [words.inline('label-reduced'), words.inline('label-change')] },
    points: [
      statementPoint({
        step: 'reduced',
        earns: words.inline('point-reduced', {
          element: elementOf(reaction.element).name,
          formula: species(reaction.before.formula),
        }),
        also: [words.inline('also-symbol', { symbol: reaction.element })],
        refuse: [words.inline('refuse-species-alone')],
      }),
      valuePoint({
        step: 'change',
        earns: words.inline('point-change', { before, after }),
        refuse: [words.inline('refuse-sign')],
      }),
    ],
    answers: ['reduced', 'change'],
  };
}

function agentPart({ reaction }: NumberDraw, id: string, context: WordsContext, words: Words): Part {
  return {
    ...plain,
    id,
    command: 'Give',
    objective: 'application',
    prompt: words.inline('agent', context),
    hints: [words.inline('agent-hint')],
    space: { kind: 'lines', count: 1 },
    points: [
      valuePoint({
        step: 'agent',
        earns: words.inline('point-agent', { formula: species(reaction.reductant) }),
        also: [words.inline('also-name', { name: String(context.reductantName) })],
        refuse: [words.inline('refuse-element')],
      }),
    ],
    answers: ['agent'],
  };
}
