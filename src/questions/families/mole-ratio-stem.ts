import { joined } from '../../chemistry/cell.ts';
import type { Block } from '../../document/block.ts';
import { equation, quantity, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { type Decimal, printDecimal } from '../../exact/decimal.ts';
import { printNumber } from '../../exact/print-number.ts';
import type { Tables } from '../../potentials/tables.ts';
import { halfEquationTable } from '../half-equation-table.ts';
import type { unitNames } from '../unit-names.ts';
import { bareEquation } from '../without-states.ts';
import { massOf, type RatioPlan } from './mole-ratio-plan.ts';

/** The stem: what reacts, what is told of the reaction, what is known, and the relative atomic masses. */
export function stemOf(
  plan: RatioPlan,
  tables: Tables,
  words: Words,
  context: WordsContext,
  units: ReturnType<typeof unitNames>,
): Block[] {
  const { drawn } = plan;
  const { oxidant, reductant, told } = drawn;
  const reaction: Block[] =
    told === 'equation'
      ? [{ kind: 'display', content: [equation(bareEquation(joined(oxidant, reductant).equation))] }]
      : told === 'half-equations'
        ? [halfEquationTable([reductant, oxidant])]
        : [];
  return [
    ...words.blocks('stem', context),
    ...(told === 'changes' ? words.blocks('changes', context) : []),
    { kind: 'given', caption: 'Given', blocks: [...reaction, readings(plan, words, context, units), ...masses(plan, tables)] },
  ];
}

/** What is known of the two reagents, one row each. */
function readings({ drawn }: RatioPlan, words: Words, context: WordsContext, units: ReturnType<typeof unitNames>): Block {
  const row = (section: string, value: Decimal | undefined, unit: string, role: string) =>
    value ? [[words.inline(section, context), [quantity(printNumber(value), unit, role)]]] : [];
  return {
    kind: 'table',
    summary: 'What is known of the two reagents',
    header: [[text('Reading')], [text('Value')]],
    rows: [
      ...row('row-mass', drawn.mass, 'g', 'm'),
      ...row('row-concentration', drawn.concentration, units.concentration, 'c'),
      ...row('row-volume', drawn.volume, units.volume, 'V'),
      ...row('row-found-concentration', drawn.foundConcentration, units.concentration, 'c-found'),
    ],
    rowHeaders: true,
    align: ['start', 'end'],
  };
}

/** Relative atomic masses, as the periodic-table extract prints them. */
function masses({ elements }: RatioPlan, tables: Tables): Block[] {
  if (elements.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: 'Relative atomic masses',
      header: [[text('Element')], ...elements.map((element) => [text(element)])],
      rows: [
        [
          [text('Relative atomic mass')],
          ...elements.map((element) => [quantity(printDecimal(tables.atomicMasses.get(element)!.printed), '', massOf(element))]),
        ],
      ],
      rowHeaders: true,
      align: ['start', ...elements.map(() => 'end' as const)],
    },
  ];
}
