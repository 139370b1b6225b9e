import { combine } from '../../chemistry/combine.ts';
import type { Equation } from '../../chemistry/equation.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { oxidationNumbers } from '../../chemistry/oxidation-numbers.ts';
import { addEquations, cancelEquation, coefficientOf, lowestTerms, scaleEquation } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species, text } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { combinedValue } from '../combined-value.ts';
import { type Expression, minus, node } from '../expression.ts';
import { numberOf, valueAt } from '../number-of.ts';
import { numberStep, numberValue } from '../number-step.ts';
import type { Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { Value, Values } from '../value.ts';
import { bareEquation } from '../without-states.ts';
import { emfOf, type Ladder, type Rung } from './stepwise-ladder.ts';
import type { LadderPlan } from './stepwise-plan.ts';

/** Id of the datum that prints a couple's E°. */
export const datumOf = (couple: { readonly id: string }): string => `E:${couple.id}`;

/** Every step of a ladder question, those of the parts that its plan has. */
export function ladderSteps(ladder: Ladder, plan: LadderPlan, tables: Tables, words: Words): Step[] {
  return [
    ...plan.emfs.map((at) => emfStep(ladder, at, plan.emfPart)),
    ...(plan.firstPart ? firstSteps(ladder, plan.firstPart, words) : []),
    plainStep(
      'final',
      plan.finalPart,
      [...ladder.rungs.map(({ couple }) => couple), ladder.next.couple, ladder.reagent].map(datumOf),
      'each product meets the reagent again until no step is feasible',
      () => speciesValue(ladder.rungs.at(-1)!.to),
    ),
    ...stopSteps(ladder, plan, words),
    ...(plan.overallPart ? overallSteps(ladder, plan.overallPart, words) : []),
    ...(plan.sees ? coloursSteps(ladder, plan, tables) : numberSteps(ladder, plan)),
  ];
}

/** E°cell of the rung at a place, from the two printed values. */
function emfStep(ladder: Ladder, at: number, part: string): Step {
  return numberStep({
    id: `emf-${at + 1}`,
    part,
    principle: 'cell potential = potential of the reduction minus potential of the oxidation',
    expression: emfExpression(ladder, ladder.rungs[at]!),
    unit: 'V',
    signed: true,
    printed: { dp: 2 },
    left: [symbol('E°cell')],
    shown: () => ({ dp: 2 }),
  });
}

export function emfExpression({ reagent, isReduction }: Ladder, { couple }: Rung): Expression {
  const [rung, other] = [node(datumOf(couple)), node(datumOf(reagent))];
  return isReduction ? minus(rung, other) : minus(other, rung);
}

function firstSteps({ rungs, reagent, isReduction }: Ladder, part: string, words: Words): Step[] {
  const { couple } = rungs[0]!;
  return [
    plainStep('species', part, [], 'which species react and what they turn into', () =>
      wordsValue('species', words.inline('answer-species')),
    ),
    plainStep('equation', part, ['species'], 'electrons given equal electrons taken', () =>
      isReduction ? combinedValue(couple, reagent) : combinedValue(reagent, couple),
    ),
  ];
}

function overallSteps(ladder: Ladder, part: string, words: Words): Step[] {
  return [
    plainStep('overall-species', part, ['final'], 'the change from the first species to the last', (values) =>
      wordsValue(finalKey(values), words.inline('answer-species')),
    ),
    plainStep('overall', part, ['overall-species', 'final'], 'all steps added, what stands on both sides cancelled', (values) => {
      const equation = overallTo(ladder, finalKey(values));
      return { kind: 'equation', equation: bareEquation(equation), arrow: 'forward' };
    }),
  ];
}

/** All steps from the start as far as a species, added and cancelled; the next rung counts as a step for one who goes too far. */
export function overallTo(ladder: Ladder, key: string): Equation {
  const { rungs, next, reagent, isReduction } = ladder;
  let sum: Equation = { left: [], right: [] };
  let amount = Rational.one;
  for (const { couple, from, to } of [...rungs, next]) {
    const { equation } = isReduction ? combine(couple.half, reagent.half) : combine(reagent.half, couple.half);
    const turns = amount.over(coefficientOf(equation.left, keyOf(from)));
    sum = addEquations(sum, scaleEquation(equation, turns));
    amount = turns.times(coefficientOf(equation.right, keyOf(to)));
    if (keyOf(to) === key) break;
  }
  return lowestTerms(cancelEquation(sum));
}

function stopSteps(ladder: Ladder, { stopPart }: LadderPlan, words: Words): Step[] {
  const data = [...ladder.rungs, ladder.next].map(({ couple }) => datumOf(couple));
  return [
    {
      id: 'stop-emf',
      part: stopPart,
      needs: ['final', datumOf(ladder.reagent), ...data],
      principle: 'cell potential of the next step',
      printed: { dp: 2 },
      work: (values) => stopEmf(ladder, values, words),
      line: (values) => stopLine(ladder, values),
    },
    plainStep('stop', stopPart, ['final'], 'a step with a negative cell potential is not feasible', (values) => {
      const rung = rungAfter(ladder, finalKey(values));
      if (!rung) return wordsValue('none', words.inline('answer-no-stop'));
      // One who stopped too early finds a positive value, which is no reason to stop.
      const isStop = emfOf(rung.couple, ladder.reagent, ladder.isReduction).sign() < 0;
      return wordsValue(
        keyOf(rung.from),
        words.inline(isStop ? 'answer-stop' : 'answer-goes-on', {
          from: species(rung.from),
          reagentFormula: species(ladder.reacts),
          isReduction: ladder.isReduction,
        }),
      );
    }),
  ];
}

function stopEmf(ladder: Ladder, values: Values, words: Words): Value {
  const rung = rungAfter(ladder, finalKey(values));
  if (!rung) return wordsValue('none', words.inline('answer-no-stop'));
  const [own, other] = [numberOf(values, datumOf(rung.couple)), numberOf(values, datumOf(ladder.reagent))];
  return numberValue(ladder.isReduction ? own.minus(other) : other.minus(own), { unit: 'V', signed: true });
}

/** The printed line of the step that does not happen; only the right answer is printed as working. */
function stopLine(ladder: Ladder, values: Values) {
  const step = numberStep({
    id: 'stop-emf',
    part: '',
    principle: '',
    expression: emfExpression(ladder, ladder.next),
    unit: 'V',
    signed: true,
    printed: { dp: 2 },
    left: [symbol('E°cell')],
    shown: () => ({ dp: 2 }),
  });
  return step.line!(values);
}

/** The step after a species, the one that does not happen included. */
export function rungAfter({ rungs, next }: Ladder, key: string): Rung | undefined {
  return [...rungs, next].find(({ from }) => keyOf(from) === key);
}

export function speciesValue(formula: Formula): Value {
  return { kind: 'species', formula };
}

export function finalKey(values: Values): string {
  const value = valueAt(values, 'final');
  if (value.kind !== 'species') throw new Error('expected a species at `final`');
  return keyOf(value.formula);
}

/** Species from the start as far as a key, the next rung's included for one who goes too far. */
export function speciesTo({ rungs, next, start }: Ladder, key: string): Formula[] {
  const all = [start, ...[...rungs, next].map(({ to }) => to)];
  return all.slice(0, all.findIndex((formula) => keyOf(formula) === key) + 1);
}

/** All colours in order and, of a chain, those that come between the first and the last. */
function coloursSteps(ladder: Ladder, { lookPart }: LadderPlan, tables: Tables): Step[] {
  const principle = 'each species has its own colour';
  const all = plainStep('colours', lookPart, ['final'], principle, (values) =>
    coloursValue(coloursTo(ladder, finalKey(values), tables)),
  );
  const between = plainStep('colours-between', lookPart, ['colours'], principle, (values) => {
    const seen = valueAt(values, 'colours');
    if (seen.kind !== 'list') throw new Error('expected a list at `colours`');
    // One who goes too far names more of them; the right ones still stand first.
    return { ...seen, values: seen.values.slice(1, -1).slice(0, ladder.rungs.length - 1) };
  });
  return ladder.rungs.length > 1 ? [all, between] : [all];
}

/**
 * The colour of the solution at each species from the start as far as a key: a metal that falls out leaves it colourless; a species that is
 * never seen alone goes by its name.
 */
export function coloursTo(ladder: Ladder, key: string, tables: Tables): string[] {
  return speciesTo(ladder, key).map((formula) => {
    const { role, colour, name } = tables.speciesOf(keyOf(formula));
    return role === 'metal' ? 'colourless' : (colour?.word ?? name);
  });
}

export function coloursValue(words: readonly string[]): Value {
  return { kind: 'list', joiner: 'then', values: words.map((word) => wordsValue(word, [text(word)])) };
}

function numberSteps(ladder: Ladder, { lookPart, numbers }: LadderPlan): Step[] {
  const value = (formula: Formula) => numberValue(oxidationNumberOf(formula, ladder.symbol), { unit: '', signed: true });
  const principle = 'oxidation numbers add up to the charge';
  const last = plainStep('number-final', lookPart, ['final'], principle, (values) => {
    const final = valueAt(values, 'final');
    return value(final.kind === 'species' ? final.formula : ladder.start);
  });
  return numbers === 'last' ? [last] : [plainStep('number-start', lookPart, [], principle, () => value(ladder.start)), last];
}

/** The oxidation number of an element in a species; zero in the element itself. */
export function oxidationNumberOf(formula: Formula, element: string): Rational {
  const site = oxidationNumbers(formula).sites.find((each) => each.element === element);
  if (!site) throw new Error(`${element} is not in ${keyOf(formula)}`);
  return site.number;
}
