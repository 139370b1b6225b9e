import type { Term } from '../../chemistry/equation.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Inline } from '../../document/inline.ts';
import { joined, species, text } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import { minus, node, number, times } from '../expression.ts';
import { numberOf } from '../number-of.ts';
import { numberStep } from '../number-step.ts';
import type { Level, Step } from '../question.ts';
import { keyAt, plainStep, wordsValue } from '../statement-step.ts';
import type { Value, Values } from '../value.ts';
import type { HalfDraw } from './half-equation.ts';
import { chargeStep, placingAt, type Written } from './half-equation-charge.ts';
import { type HalfPlan, isSolvent } from './half-equation-plan.ts';
import { type MakeUp, writtenHalf } from './half-equation-write.ts';

/** Ids of the parts in which the steps of the main half-equation stand. */
export interface MainParts {
  readonly electrons: string;
  readonly half: string;
}

/** In core questions electrons are asked for first; at stretch they are found on the way. */
export const mainParts = (level: Level): MainParts =>
  level === 'core' ? { electrons: 'b', half: 'c' } : { electrons: 'b', half: 'b' };

/** Steps of the partner's half-equation, of the main one, and at stretch of the explanation. */
export function halfSteps({ main, partner }: HalfDraw, level: Level, words: Words): Step[] {
  const parts = mainParts(level);
  return [
    ...partnerSteps(partner, words),
    changeStep(main, parts.electrons),
    electronsStep(main, parts.electrons),
    makeUpStep('makeup', main, parts.half, words),
    chargeStep('charge', parts.half, ['makeup', 'electrons'], mainWritten(main)),
    plainStep('half', parts.half, ['makeup', 'electrons', 'charge'], 'electrons balance the charge', (values) =>
      mainWritten(main)(values, placingAt(values, 'charge')),
    ),
    ...(level === 'core' ? [] : agentSteps(main.isReduction ? main : partner, words)),
  ];
}

function partnerSteps(partner: HalfPlan, words: Words): Step[] {
  const before = partner.isBuilt ? ['partner-makeup'] : [];
  const written: Written = (values, placing) =>
    writtenHalf(
      partner,
      partner.isBuilt ? makeUpAt(values, 'partner-makeup') : 'right',
      placing === 'one atom' ? Rational.of(oneAtom(partner), unitsOf(partner)) : Rational.of(partner.perUnit),
      placing === 'one atom' ? 'right' : placing,
    );
  return [
    ...(partner.isBuilt ? [makeUpStep('partner-makeup', partner, 'a', words)] : []),
    chargeStep('partner-charge', 'a', before, written),
    plainStep('partner', 'a', [...before, 'partner-charge'], 'electrons balance the charge', (values) =>
      written(values, placingAt(values, 'partner-charge')),
    ),
  ];
}

const mainWritten =
  (main: HalfPlan): Written =>
  (values, placing) =>
    writtenHalf(main, makeUpAt(values, 'makeup'), numberOf(values, 'electrons'), placing === 'one atom' ? 'right' : placing);

/** Electrons of one atom that changes. */
export const oneAtom = ({ change, perUnit }: HalfPlan): number => (change ? Math.abs(change.from - change.to) : perUnit);

/** A plan's change, which every main half-equation has. */
export function changeIn(plan: HalfPlan): NonNullable<HalfPlan['change']> {
  if (!plan.change) throw new Error(`${plan.couple.id} has no whole change of oxidation number`);
  return plan.change;
}

function changeStep(main: HalfPlan, part: string): Step {
  const { from, to, element } = changeIn(main);
  const [high, low] = from > to ? [from, to] : [to, from];
  return numberStep({
    id: 'change',
    part,
    principle: 'the change in oxidation number is the number of electrons for one atom',
    expression: minus(number(whole(high)), number(whole(low))),
    unit: '',
    printed: { dp: 0 },
    left: [text(`electrons per atom of ${element}`)],
    shown: () => 'exact',
  });
}

const whole = (value: number): string => (value < 0 ? `\u2212${-value}` : String(value));

function electronsStep(main: HalfPlan, part: string): Step {
  return numberStep({
    id: 'electrons',
    part,
    principle: 'every atom that changes counts',
    expression: times(number(String(changeIn(main).atoms)), node('change')),
    unit: '',
    printed: { dp: 0 },
    left: [text('electrons per formula '), species(main.subject)],
    shown: () => ({ dp: 0 }),
  });
}

function makeUpStep(id: string, plan: HalfPlan, part: string, words: Words): Step {
  return plainStep(id, part, [], 'oxygen by water, hydrogen by hydrogen ions; in alkali by water and hydroxide ions', () =>
    wordsValue('right' satisfies MakeUp, makeUpWords(plan, words)),
  );
}

/** `14H⁺ on the left and 7H₂O on the right` */
export function makeUpWords({ skeleton, subject, product }: HalfPlan, words: Words): Inline[] {
  const own = [subject, product].map(keyOf);
  const put = (terms: readonly Term[]) => terms.filter((term) => isSolvent(term) && !own.includes(keyOf(term.formula)));
  const sides = [put(skeleton.left), put(skeleton.right)].map((terms) => joined(terms.map(termInlines), ' and '));
  const told = (['left', 'right'] as const).flatMap((side, at) =>
    sides[at]!.length > 0 ? [words.inline('on-side', { terms: sides[at]!, side })] : [],
  );
  return joined(told, ', ');
}

function termInlines({ coefficient, formula }: Term): Inline[] {
  return [...(coefficient.equals(Rational.one) ? [] : [text(String(coefficient))]), species(formula)];
}

export function makeUpAt(values: Values, id: string): MakeUp {
  const key = keyAt(values, id);
  return key === 'oxygen gas' || key === 'hydrogen ions' ? key : 'right';
}

/** At stretch: whose number falls, and what that makes it. */
function agentSteps(oxidant: HalfPlan, words: Words): Step[] {
  const change = changeIn(oxidant);
  return [
    plainStep('falls', 'c', [], 'reduction is a fall in oxidation number', () =>
      wordsValue(change.element, words.inline('answer-falls', { element: change.name })),
    ),
    plainStep(
      'agent',
      'c',
      [],
      'the oxidising agent is itself reduced',
      (): Value => ({ kind: 'species', formula: oxidant.subject }),
    ),
  ];
}

/** How many units of the subject stand in the half-equation. */
export const unitsOf = ({ skeleton, subject }: HalfPlan): number => coefficientOf(skeleton.left, keyOf(subject)).toNumber();
