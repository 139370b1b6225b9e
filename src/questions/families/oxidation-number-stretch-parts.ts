import { elementOf } from '../../chemistry/elements.ts';
import { averageNote, COUNTS } from '../../chemistry/oxidation-data.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import { numberFrom } from '../oxidation-account.ts';
import { methodPoint, statementPoint, valuePoint } from '../point.ts';
import type { Part } from '../question.ts';
import { showNumber } from '../show-value.ts';
import type { NumberDraw } from './oxidation-number.ts';

const plain = { maths: 0, practical: 0 } as const;

/** What an average says of single atoms. */
export function averagePart({ wanted: [, , last] }: NumberDraw, context: WordsContext, words: Words): Part {
  // Asked as a choice, the species may be no average, and this part is left out.
  const note = (averageNote(keyOf(last.formula)) ?? '').replace(/^an average: /, '');
  const total = numberFrom(last.account).times(Rational.of(last.account.atoms));
  return {
    ...plain,
    id: 'b',
    command: 'Explain',
    objective: 'analysis',
    prompt: words.inline('average', { ...context, formula: species(last.formula), element: last.name }),
    hints: [words.inline('average-hint', { element: last.name })],
    space: { kind: 'lines', count: 4 },
    points: [
      statementPoint({
        step: 'why-average',
        earns: words.inline('point-average', {
          element: last.name,
          total: signed(total),
          atoms: COUNTS[last.account.atoms] ?? String(last.account.atoms),
        }),
        refuse: [words.inline('refuse-average')],
        ignore: [words.inline('ignore-average')],
      }),
      statementPoint({
        step: 'why-unlike',
        earns: words.inline('point-unlike', { element: last.name, note }),
        refuse: [words.inline('refuse-unlike')],
      }),
    ],
    answers: ['why-average', 'why-unlike'],
  };
}

/** Electrons that pass in the equation as written. */
export function electronsPart({ reaction }: NumberDraw, context: WordsContext, words: Words): Part {
  const { before, after, atoms, electrons } = reaction;
  const [from, to] = [numberFrom(before.account), numberFrom(after.account)];
  const counted = { atoms: String(atoms), electrons: String(electrons), change: showNumber(from.minus(to), 'exact') };
  return {
    id: 'c',
    command: 'Deduce',
    objective: 'analysis',
    maths: 1,
    practical: 0,
    prompt: words.inline('electrons', context),
    hints: [words.inline('electrons-hint')],
    space: { kind: 'working', marks: 2, symbol: [text('number of electrons')], unit: '' },
    points: [
      methodPoint({
        step: 'per-atom',
        earns: words.inline('point-per-atom', {
          ...counted,
          element: elementOf(reaction.element).name,
          before: signed(from),
          after: signed(to),
        }),
        also: [words.inline('also-oxidised')],
        refuse: [words.inline('refuse-bare')],
      }),
      valuePoint({
        step: 'electrons',
        earns: words.inline('point-electrons', {
          ...counted,
          element: elementOf(reaction.element).name,
          several: atoms > 1,
          isOne: electrons === 1,
        }),
        also: [words.inline('also-bare')],
        carries: true,
      }),
    ],
    answers: ['electrons'],
  };
}

const signed = (value: Parameters<typeof showNumber>[0]) => quantity(showNumber(value, 'exact', true), '');
