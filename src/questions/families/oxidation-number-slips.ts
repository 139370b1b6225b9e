import { coefficientOf } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Level, Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import type { NodeId } from '../value.ts';
import type { NumberDraw } from './oxidation-number.ts';
import { alongSlips } from './oxidation-number-along.ts';
import type { Kind, Wanted } from './oxidation-number-species.ts';
import { numberAt, stateValue } from './oxidation-number-steps.ts';
import { wrongNumbers } from './oxidation-number-wrong.ts';

/** Slips in the order in which they are met; the hardest species of the first part stands first. */
export function numberSlips({ wanted, reaction }: NumberDraw, level: Level, tables: Tables, words: Words): Slip[] {
  const slip = slipMaker(tables, words);
  const sums = (at: NodeId, { formula, account }: Pick<Wanted, 'formula' | 'account'>, kind?: Kind) => {
    const own = slipMaker(tables, words, { formula: species(formula) });
    return Object.entries(wrongNumbers(account, kind)).flatMap(([id, wrong]) =>
      wrong ? [own(id, at, () => stateValue(wrong))] : [],
    );
  };
  const plain = (value: Rational) => numberValue(value, { unit: '' });
  const oxidant = coefficientOf(reaction.equation.left, keyOf(reaction.before.formula));
  return [
    ...[2, 1, 0].flatMap((place) => sums(numberAt(place), wanted[place]!, wanted[place]!.kind)),
    ...alongSlips(reaction, level, tables, words),
    ...(level === 'core'
      ? []
      : [
          slip('HE-ELECTRONS-PER-ATOM', 'electrons', (values) => plain(numberOf(values, 'per-atom'))),
          // Nothing was done with oxidation numbers, unless the same figure comes from one atom's.
          {
            ...slip(
              'RX-COEFFICIENT-ELECTRONS',
              'electrons',
              () => plain(oxidant),
              (values) => !numberOf(values, 'per-atom').equals(oxidant),
            ),
            skips: ['per-atom'],
          },
        ]),
    slip('RX-AGENT-SWAP', 'agent', () => ({ kind: 'species', formula: reaction.before.formula })),
  ];
}
