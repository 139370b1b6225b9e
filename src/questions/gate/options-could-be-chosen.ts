import type { Equation } from '../../chemistry/equation.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import type { ChoiceOption, Part } from '../question.ts';
import { computeText } from './compute-text.ts';
import type { GateRule } from './rule.ts';

/** The largest factor between a wrong figure and the right one: thirty, or a ratio of six to one turned upside down (36), rounded figures apart. */
const MOST = Rational.of(37);

/**
 * Options among which a pupil has to choose: figures of a size to be believed (after Haladyna, Downing & Rodriguez 2002), all in one
 * notation, and no second equation that is true because it says the same as the right one.
 */
export const optionsCouldBeChosen: GateRule = {
  id: 'options-could-be-chosen',
  holds:
    'no unsigned figure is over 36 times the right one or under a 36th of it, all stand in one notation, no wrong equation is true',
  check: ({ item }) => item.parts.flatMap((part) => (part.options ? [...figureProblems(part), ...equationProblems(part)] : [])),
};

function figureProblems({ options }: Part): string[] {
  const printed = options!.flatMap(({ value, content, slip }) =>
    value.kind === 'number'
      ? content.flatMap((inline) => (inline.kind === 'quantity' ? [{ number: inline.number, slip }] : []))
      : [],
  );
  const key = computeText(printed.find(({ slip }) => slip === undefined)?.number ?? '');
  const isStandard = new Set(printed.map(({ number }) => number.includes('×')));
  return [
    ...(isStandard.size > 1 ? ['options stand in two notations'] : []),
    ...printed.flatMap(({ number, slip }) =>
      slip !== undefined && key && !/^[+−]/.test(number) && isAbsurd(computeText(number), key)
        ? [`the option ${number} is absurd beside the right one`]
        : [],
    ),
  ];
}

function isAbsurd(wrong: Rational | undefined, right: Rational): boolean {
  if (!wrong || wrong.isZero() || right.isZero()) return false;
  const [small, large] = [wrong.abs(), right.abs()].sort((a, b) => a.compare(b)) as [Rational, Rational];
  return large.compare(small.times(MOST)) > 0;
}

function equationProblems({ options }: Part): string[] {
  const key = options!.find(({ slip }) => slip === undefined);
  const right = key && netOf(key);
  return options!.flatMap((option) => {
    const net = option === key ? undefined : netOf(option);
    return right && net && isMultiple(net, right) ? [`the wrong option of ${option.slip} says the same as the right one`] : [];
  });
}

/** How much of each species an equation makes; of what stands on both sides only the difference, and nothing of what is not changed. */
function netOf({ value }: ChoiceOption): Map<string, Rational> | undefined {
  if (value.kind !== 'equation') return undefined;
  const { left, right }: Equation = value.equation;
  const net = new Map<string, Rational>();
  const add = (key: string, amount: Rational) => net.set(key, (net.get(key) ?? Rational.zero).plus(amount));
  for (const { formula, coefficient } of left) add(keyOf(formula), coefficient.negate());
  for (const { formula, coefficient } of right) add(keyOf(formula), coefficient);
  return new Map([...net].filter(([, amount]) => !amount.isZero()));
}

/** True when one change is the other done so many times, in the same direction. */
function isMultiple(one: ReadonlyMap<string, Rational>, other: ReadonlyMap<string, Rational>): boolean {
  const [first] = other;
  const unit = first && one.get(first[0])?.over(first[1]);
  if (!unit || unit.sign() <= 0 || one.size !== other.size) return false;
  return [...other].every(([key, amount]) => one.get(key)?.equals(amount.times(unit)) === true);
}
