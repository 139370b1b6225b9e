import type { Equation } from '../../chemistry/equation.ts';
import { addEquations, cancelEquation, scaleEquation } from '../../chemistry/terms.ts';
import { text } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import { combinedValue, wrongEquation } from '../combined-value.ts';
import { type Expression, number, over, times } from '../expression.ts';
import { valueAt } from '../number-of.ts';
import { numberStep } from '../number-step.ts';
import type { Step } from '../question.ts';
import { keyAt, plainStep, wordsValue } from '../statement-step.ts';
import { sumWithoutElectrons } from '../unscaled-sum.ts';
import type { NodeId, Value, Values } from '../value.ts';
import { bare } from '../without-states.ts';
import type { CombineFacts, HalfOnPage } from './combine-halves-facts.ts';

/** Key of a direction in which neither half-equation is turned round. */
export const NEITHER_TURNED = 'neither';
const TIDY = 'tidy';
/** Key of an equation in which a species is left on both sides. */
export const ON_BOTH_SIDES = 'left on both sides';

/** Factors and direction lead to the equation; the stretch question finds the direction from potentials first. */
export function combineSteps(facts: CombineFacts, words: Words): Step[] {
  const joining = [sidesStep(facts, words), tidyStep(facts), equationStep(facts)];
  return facts.drawn.given === 'with potentials'
    ? [
        directionStep(facts, words),
        agentStep(facts, 'a', ['direction']),
        factorsStep(facts, 'b', words),
        ...joining,
        electronsStep(facts),
      ]
    : [factorsStep(facts, 'a', words), ...joining, agentStep(facts, 'c', [])];
}

function factorsStep({ halves }: CombineFacts, part: string, words: Words): Step {
  return plainStep('factors', part, [], 'the electrons taken up must equal the electrons given', () =>
    factorsValue([halves[0].factor, halves[1].factor], words),
  );
}

/** What each half-equation is multiplied by, in printed order. */
export function factorsValue([first, second]: readonly [Rational, Rational], words: Words): Value {
  const [one, other] = [String(first), String(second)];
  const content = words.inline('answer-factors', { first: one, second: other });
  return wordsValue(`${one} ${other}`, content, [[text(one)], [text(other)]]);
}

/** The direction as the label of the half-equation that runs as a reduction. */
export function directionValue(reduced: HalfOnPage, words: Words): Value {
  return wordsValue(reduced.label, words.inline('answer-direction', { label: reduced.label }));
}

function directionStep(facts: CombineFacts, words: Words): Step {
  const needs = facts.halves.map(({ datum }) => datum);
  return plainStep('direction', 'a', needs, 'the more positive potential belongs to the reduction', () =>
    directionValue(facts.reduced, words),
  );
}

function agentStep(facts: CombineFacts, part: string, needs: readonly NodeId[]): Step {
  return plainStep('agent', part, needs, 'the oxidising agent is the species that takes up the electrons', (values) => {
    const { reduced } = needs.length > 0 ? runs(facts, keyAt(values, 'direction')) : facts;
    return { kind: 'species', formula: bare(reduced.couple.oxidised) };
  });
}

/** Which species stand on which side: what the direction says, where it was asked. */
function sidesStep(facts: CombineFacts, words: Words): Step {
  const isAsked = facts.drawn.given === 'with potentials';
  return plainStep(
    'sides',
    'b',
    isAsked ? ['direction'] : [],
    'one half-equation runs as a reduction, the other as an oxidation',
    (values) => (isAsked ? valueAt(values, 'direction') : directionValue(facts.reduced, words)),
  );
}

/** Whether electrons and what stands on both sides are gone: it hangs on the factors, not on the direction. */
function tidyStep(facts: CombineFacts): Step {
  return plainStep('tidy', 'b', ['sides', 'factors'], 'what stands on both sides cancels', (values) => {
    const isMatched = facts.halves.every((half, at) => factorsAt(values)[at]!.equals(half.factor));
    return wordsValue(isMatched && keyAt(values, 'sides') !== NEITHER_TURNED ? TIDY : 'electrons left', []);
  });
}

function equationStep(facts: CombineFacts): Step {
  return plainStep('equation', 'b', ['sides', 'factors', 'tidy'], 'the scaled half-equations are added', (values) =>
    joinedBy(facts, values),
  );
}

/** Which half-equation is reduced by an answer: the other one is oxidised. */
function runs({ halves }: CombineFacts, label: string): { readonly reduced: HalfOnPage; readonly oxidised: HalfOnPage } {
  const [one, two] = halves;
  return label === two.label ? { reduced: two, oxidised: one } : { reduced: one, oxidised: two };
}

/** The equation that direction and factors lead to; with the right factors it is the balanced one. */
function joinedBy(facts: CombineFacts, values: Values): Value {
  if (keyAt(values, 'sides') === NEITHER_TURNED) return bothAsReductions(facts);
  const { reduced, oxidised } = runs(facts, keyAt(values, 'sides'));
  const tidy = keyAt(values, 'tidy');
  if (tidy === TIDY) return combinedValue(reduced.couple, oxidised.couple);
  const [first, second] = factorsAt(values);
  const factorOf = (half: HalfOnPage) => (half === facts.halves[0] ? first : second);
  const cancel = tidy !== ON_BOTH_SIDES;
  return wrongEquation(
    sumWithoutElectrons(reduced.couple.half, oxidised.couple.half, factorOf(reduced), factorOf(oxidised), cancel),
  );
}

function factorsAt(values: Values): [Rational, Rational] {
  return keyAt(values, 'factors').split(' ').map(Rational.parse) as [Rational, Rational];
}

/** Both half-equations, scaled and added in the direction in which they are printed. */
function bothAsReductions({ halves }: CombineFacts): Value {
  const [one, two] = halves.map(({ couple, factor }): Equation => scaleEquation(couple.half, factor));
  return wrongEquation(cancelEquation(addEquations(one!, two!)));
}

/** Electrons that pass in the equation as written, and how they are counted. */
function electronsStep({ reduced, combined }: CombineFacts): Step {
  const taken = times(number(String(reduced.factor)), number(String(reduced.couple.half.electrons)));
  const all: Expression = combined.divisor.equals(Rational.one) ? taken : over(taken, number(String(combined.divisor)));
  return numberStep({
    id: 'electrons',
    part: 'c',
    principle: combined.divisor.equals(Rational.one)
      ? 'electrons of one half-equation × the factor used'
      : 'electrons of one half-equation × the factor used, divided by what the whole equation was divided by',
    expression: all,
    unit: '',
    printed: { dp: 0 },
    left: [text('electrons')],
    shown: () => 'exact',
  });
}
