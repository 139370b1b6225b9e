import { quantity, species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { printDecimal } from '../../exact/decimal.ts';
import { combinedValue } from '../combined-value.ts';
import type { Ask } from '../family.ts';
import type { Step } from '../question.ts';
import { keyAt, plainStep, wordsValue } from '../statement-step.ts';
import type { Value, Values } from '../value.ts';
import { bare } from '../without-states.ts';
import type { CellFacts, CellOnPage } from './cell-emf-facts.ts';

/** Which way the cell runs, by the label of the half-cell that is oxidised. */
export function runs(values: Values, { cells }: CellFacts): { readonly oxidised: CellOnPage; readonly reduced: CellOnPage } {
  const [a, b] = cells;
  return keyAt(values, 'direction') === a.label ? { oxidised: a, reduced: b } : { oxidised: b, reduced: a };
}

/** What fills the wording when one half-cell is oxidised. */
export function runContext(oxidised: CellOnPage, reduced: CellOnPage): WordsContext {
  return {
    from: oxidised.name,
    to: reduced.name,
    negative: oxidised.name,
    reducedReactant: species(bare(oxidised.couple.reduced)),
    oxidisedReactant: species(bare(reduced.couple.oxidised)),
    otherReduced: species(bare(reduced.couple.reduced)),
    low: quantity(printDecimal(oxidised.couple.printed, true), 'V'),
    high: quantity(printDecimal(reduced.couple.printed, true), 'V'),
  };
}

/** The direction as a value: its key is the label of the half-cell that is oxidised. */
export function directionValue(oxidised: CellOnPage, reduced: CellOnPage, words: Words): Value {
  return wordsValue(oxidised.label, words.inline('answer-direction', runContext(oxidised, reduced)));
}

/** Steps after the e.m.f.: direction, equation, electrons and why, and at stretch the ions of the bridge. */
export function cellSteps(facts: CellFacts, words: Words, ask: Ask): Step[] {
  const told = (section: string) => (values: Values) => {
    const { oxidised, reduced } = runs(values, facts);
    return wordsValue(`${section} ${oxidised.label}`, words.inline(section, runContext(oxidised, reduced)));
  };
  const why = (values: Values) =>
    runs(values, facts).oxidised === facts.negative ? told('answer-why')(values) : told('answer-why-reversed')(values);
  return [
    plainStep(
      'direction',
      'b',
      facts.cells.map(({ datum }) => datum),
      'the half-cell with the less positive potential is oxidised',
      () => directionValue(facts.negative, facts.positive, words),
    ),
    plainStep('equation', 'b', ['direction'], 'electrons given equal electrons taken', (values) => {
      const { oxidised, reduced } = runs(values, facts);
      return combinedValue(reduced.couple, oxidised.couple);
    }),
    plainStep(
      'flow',
      'c',
      ['direction'],
      'electrons leave the electrode where oxidation happens and pass through the wire',
      told('answer-flow'),
    ),
    plainStep('why', 'c', ['direction'], 'a less positive potential means electrons are given up more readily', why),
    ...(ask.level === 'stretch'
      ? [
          plainStep(
            'bridge',
            'd',
            ['direction'],
            'positive ions move to the solution where reduction happens',
            told('answer-bridge'),
          ),
        ]
      : []),
  ];
}
