import { elementOf } from '../../chemistry/elements.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species, text } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Rounding } from '../../exact/rounding.ts';
import { minus, node, number, times } from '../expression.ts';
import { valueAt } from '../number-of.ts';
import { numberStep, numberValue } from '../number-step.ts';
import { type Account, accountExpression, numberFrom } from '../oxidation-account.ts';
import type { Level, Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { NodeId, Value } from '../value.ts';
import type { NumberDraw } from './oxidation-number.ts';
import type { Wanted } from './oxidation-number-species.ts';
import { wrongNumbers } from './oxidation-number-wrong.ts';

/** Id of the step that gives the number of the species at a place. */
export const numberAt = (at: number): NodeId => `number-${at + 1}`;

/** The steps of a written question. The stretch question goes on to electrons, the core question to the element that is reduced. */
export function numberSteps({ wanted, reaction }: NumberDraw, level: Level, words: Words): Step[] {
  const along = level === 'core' ? 'b' : 'c';
  const first = wanted.map((each, at) => accountStep(numberAt(at), 'a', each, each.formula));
  const changed = [
    accountStep('before', along, { element: reaction.element, account: reaction.before.account }, reaction.before.formula),
    accountStep('after', along, { element: reaction.element, account: reaction.after.account }, reaction.after.formula),
  ];
  return level === 'core'
    ? [...first, reducedStep(reaction.element), ...changed, changeStep(), agentStep('c', reaction.reductant)]
    : [
        ...first,
        ...averageSteps(wanted[2], words),
        ...changed,
        ...electronSteps(reaction.atoms),
        agentStep('d', reaction.reductant),
      ];
}

/**
 * An oxidation number from the charge and what everything else brings, written out as a pupil would; of a single ion or an element
 * there is nothing to write out.
 */
export function accountStep(
  id: NodeId,
  part: string,
  { element, account, states }: Pick<Wanted, 'element' | 'account' | 'states'>,
  formula: Wanted['formula'],
): Step {
  const step = numberStep({
    id,
    part,
    principle: 'oxidation numbers add up to the charge of the species',
    expression: accountExpression(account),
    unit: '',
    signed: true,
    printed: roundingOf(account),
    left: [text(`${element} in `), species(formula), ...(states ? [text(' (average)')] : [])],
    shown: () => 'exact',
  });
  if (account.others.length > 0) return step;
  const { line: _, ...silent } = step;
  return silent;
}

/** Whole numbers are printed whole; where the number or a wrong answer for it is a fraction, all stay exact. */
function roundingOf(account: Account): Rounding {
  const all = [numberFrom(account), ...Object.values(wrongNumbers(account))];
  return all.every((each) => each === undefined || each.isInteger()) ? { dp: 0 } : 'exact';
}

/** An oxidation number as a value. */
export function stateValue(value: Rational): Value {
  return numberValue(value, { unit: '', signed: true });
}

function reducedStep(element: string): Step {
  return plainStep('reduced', 'b', [], 'the element whose oxidation number falls is reduced', () =>
    wordsValue(element, [text(elementOf(element).name)]),
  );
}

function changeStep(): Step {
  return plainStep(
    'change',
    'b',
    ['before', 'after'],
    'the change goes from the number in the reactant to the number in the product',
    (values) => ({
      kind: 'list',
      joiner: 'then',
      values: [valueAt(values, 'before'), valueAt(values, 'after')],
    }),
  );
}

/** Why the number is a fraction: two statements. */
function averageSteps({ formula }: Wanted, words: Words): Step[] {
  return ['average', 'unlike'].map((which) =>
    plainStep(`why-${which}`, 'b', [], 'a fraction is an average over atoms that are not alike', () =>
      wordsValue(`${which} ${keyOf(formula)}`, words.inline(`answer-${which}`)),
    ),
  );
}

function electronSteps(atoms: number): Step[] {
  const perAtom = numberStep({
    id: 'per-atom',
    part: 'c',
    principle: 'the fall in oxidation number is the number of electrons that one atom takes up',
    expression: minus(node('before'), node('after')),
    unit: '',
    printed: { dp: 0 },
    left: [text('electrons for one atom')],
    shown: () => 'exact',
  });
  const all = numberStep({
    id: 'electrons',
    part: 'c',
    principle: 'every atom that changes takes up as many',
    expression: times(number(String(atoms)), node('per-atom')),
    unit: '',
    printed: { dp: 0 },
    left: [text('electrons in all')],
    shown: () => ({ dp: 0 }),
  });
  return [perAtom, all];
}

function agentStep(part: string, formula: Wanted['formula']): Step {
  return plainStep('agent', part, [], 'the reducing agent is the species that is oxidised', () => ({ kind: 'species', formula }));
}
