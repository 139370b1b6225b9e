import type { Couple } from '../../chemistry/couple.ts';
import { quantity, species } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import { combinedValue } from '../combined-value.ts';
import { minus, node } from '../expression.ts';
import { numberOf } from '../number-of.ts';
import { numberStep } from '../number-step.ts';
import type { Step } from '../question.ts';
import { showNumber } from '../show-value.ts';
import { keyAt, plainStep, wordsValue } from '../statement-step.ts';
import type { Value, Values } from '../value.ts';
import { bare } from '../without-states.ts';
import { datumOf } from './predict-reaction-context.ts';
import type { Pair } from './predict-reaction-pair.ts';

/** Steps of a question about two species: E°cell, the comparison, the verdict, and the equation of what is feasible. */
export function pairSteps(pair: Pair): Step[] {
  return [
    emfStep(pair),
    ...(pair.roles ? opposedSteps(pair) : alikeSteps(pair)),
    plainStep('equation', 'c', ['direction'], 'electrons given equal electrons taken', (values) => {
      const { reduced, oxidised } = runs(pair, values);
      return combinedValue(reduced, oxidised);
    }),
  ];
}

/** E°cell for the reaction that is asked about, or of the cell when neither species can be oxidised by the other. */
function emfStep({ roles, high, low }: Pair): Step {
  const [up, down] = roles ? [roles.taker.couple, roles.giver.couple] : [high, low];
  return numberStep({
    id: 'emf',
    part: 'a',
    principle: 'cell potential = potential of the half-cell that is reduced minus potential of the one that is oxidised',
    expression: minus(node(datumOf(up)), node(datumOf(down))),
    unit: 'V',
    signed: true,
    printed: { dp: 2 },
    left: [symbol('E°cell')],
    shown: () => ({ dp: 2 }),
  });
}

function opposedSteps(pair: Pair): Step[] {
  const { words, context, roles, high, low } = pair;
  return [
    plainStep('compare', 'b', [datumOf(high), datumOf(low)], 'the couple with the more positive potential is reduced', () =>
      wordsValue('compare', words.inline('point-compare', context)),
    ),
    plainStep('verdict', 'b', ['emf'], 'a reaction with a positive cell potential is feasible', (values) =>
      verdictOf(pair, isFeasible(values)),
    ),
    plainStep(
      'direction',
      'c',
      ['verdict'],
      'the reaction that is feasible is the one with a positive cell potential',
      (values) => directionOf(pair, keyAt(values, 'verdict') === 'yes' ? roles!.giver.couple : roles!.taker.couple),
    ),
  ];
}

function alikeSteps(pair: Pair): Step[] {
  const { words, context, kind, high, low } = pair;
  return [
    plainStep('sides', 'b', [], 'an oxidising agent needs a reducing agent', () =>
      wordsValue('alike', words.inline(`point-${kind}`, context)),
    ),
    plainStep(
      'verdict',
      'b',
      ['sides'],
      'nothing happens unless one species takes electrons and the other gives them',
      (values) =>
        keyAt(values, 'sides') === 'alike'
          ? wordsValue('no', words.inline(`answer-${kind}`, context))
          : wordsValue('yes', words.inline('answer-sides-wrong', context)),
    ),
    plainStep('direction', 'c', [datumOf(high), datumOf(low)], 'the couple with the more positive potential is reduced', () =>
      directionOf(pair, low),
    ),
  ];
}

const isFeasible = (values: Values): boolean => numberOf(values, 'emf').sign() > 0;

/** Whether the two react, by the E°cell that was found, as a value with the key `yes` or `no`. */
function verdictOf({ words, context }: Pair, yes: boolean): Value {
  return wordsValue(yes ? 'yes' : 'no', words.inline(yes ? 'answer-yes' : 'answer-no', context));
}

/** The verdict of one who takes the more positive couple to give electrons. */
export function turnedVerdict({ words, context }: Pair, yes: boolean): Value {
  return wordsValue(yes ? 'yes' : 'no', words.inline(yes ? 'answer-yes-turned' : 'answer-no-turned', context));
}

/** The way the reaction runs, as a value: its key is the id of the couple that is oxidised. */
export function directionOf({ words, high, low }: Pair, oxidised: Couple): Value {
  const reduced = oxidised === high ? low : high;
  const filled = { oxidant: species(bare(reduced.oxidised)), reductant: species(bare(oxidised.reduced)) };
  return wordsValue(oxidised.id, words.inline('answer-direction', filled));
}

/** The couples as the pupil runs them. */
export function runs({ high, low }: Pair, values: Values): { readonly reduced: Couple; readonly oxidised: Couple } {
  return keyAt(values, 'direction') === high.id ? { reduced: low, oxidised: high } : { reduced: high, oxidised: low };
}

/** The one step that a choice asks for: the verdict with its reason. */
export function predictionStep(pair: Pair): Step {
  const principle = 'a positive cell potential means feasible, for an oxidising agent with a reducing agent';
  if (pair.roles) return plainStep('prediction', 'b', ['emf'], principle, (values) => predicted(pair, values));
  return plainStep('prediction', 'b', ['sides', datumOf(pair.high), datumOf(pair.low)], principle, (values) =>
    keyAt(values, 'sides') === 'alike' ? neither(pair) : oneOxidises(pair, pair.high),
  );
}

function predicted({ words }: Pair, values: Values): Value {
  const shown = showNumber(numberOf(values, 'emf'), { dp: 2 }, true);
  const verdict = isFeasible(values) ? 'yes' : 'no';
  return wordsValue(`${verdict} ${shown}`, words.inline(`option-${verdict}`, { emf: quantity(shown, 'V') }));
}

function neither({ words, kind }: Pair): Value {
  return wordsValue('neither', words.inline(`option-${kind}`));
}

/** The wrong idea that one of two like agents acts on the other; the key is the couple that is taken to be reduced. */
export function oneOxidises({ words, draw, kind, high, low }: Pair, reduced: Couple): Value {
  const form = draw.first.form;
  const other = reduced === high ? low : high;
  const filled = { up: species(bare(reduced[form])), down: species(bare(other[form])) };
  return wordsValue(reduced.id, words.inline(kind === 'oxidants' ? 'option-oxidises' : 'option-reduces', filled));
}
