import { combine } from '../chemistry/combine.ts';
import { CHARGE, composition } from '../chemistry/composition.ts';
import type { Equation, Term } from '../chemistry/equation.ts';
import { halfEquation } from '../chemistry/half-equation.ts';
import { chargeText, oxidationText } from '../chemistry/oxidation-rules.ts';
import { type RedoxChange, redoxChanges } from '../chemistry/redox-changes.ts';
import { reverseEquation, sameEquation } from '../chemistry/terms.ts';
import { writeEquation } from '../chemistry/write-equation.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Balanced } from './calculators/balance.ts';
import { columns, lines, listed } from './tell.ts';

/** The balanced equation, what is oxidised and reduced in it, its half-equations, and what each side holds. */
export function tellBalance(found: Balanced): string {
  const { equation } = found.solved;
  return lines(writeEquation(equation), `  ${whatHappens(found)}`, halvesOf(found), `  ${sumOf(equation)}`);
}

function whatHappens({ solved }: Balanced): string {
  const { kind, equation, electrons } = solved;
  if (kind === 'undecided') return 'Balanced; oxidation numbers are not decided here.';
  if (kind === 'no-redox') return 'No oxidation number changes: this is no redox reaction.';
  const changes = changesIn(equation).map(changeText);
  if (kind === 'half') {
    const taken = equation.left.some(({ formula }) => keyOf(formula) === 'e^-');
    const verb = taken ? 'taken up: a reduction' : 'given off: an oxidation';
    return `${electronsText(electrons!)} ${verb}${changes.length === 0 ? '' : `; ${listed(changes)}`}.`;
  }
  return `${electronsText(electrons!)} passed: ${listed(changes)}.`;
}

function electronsText(count: Rational): string {
  return count.equals(Rational.one) ? '1 electron is' : `${count} electrons are`;
}

function changesIn(equation: Equation): RedoxChange[] {
  try {
    return redoxChanges(equation);
  } catch (error) {
    if (error instanceof Fault) return [];
    throw error;
  }
}

function changeText({ element, reactant, product, from, to }: RedoxChange): string {
  const verb = to.compare(from) > 0 ? 'oxidised' : 'reduced';
  return `${keyOf(reactant)} is ${verb} to ${keyOf(product)} (${element} ${oxidationText(from)} to ${oxidationText(to)})`;
}

/** The two half-equations, when they add up to just this equation. */
function halvesOf({ solved, medium }: Balanced): string[] {
  if (solved.kind !== 'redox') return [];
  const changes = changesIn(solved.equation);
  const rises = ({ from, to }: RedoxChange) => to.compare(from) > 0;
  for (const up of changes.filter(rises)) {
    for (const down of changes.filter((change) => !rises(change))) {
      const oxidation = attempt(() => halfEquation(up.product, up.reactant, medium));
      const reduction = attempt(() => halfEquation(down.reactant, down.product, medium));
      const joined = oxidation && reduction && attempt(() => combine(reduction, oxidation));
      if (!joined || !sameEquation(joined.equation, solved.equation)) continue;
      const times = (count: Rational) => (count.equals(Rational.one) ? '' : `× ${count}`);
      return columns([
        ['oxidation:', writeEquation(reverseEquation(oxidation)), times(joined.timesOxidation)],
        ['reduction:', writeEquation(reduction), times(joined.timesReduction)],
      ]);
    }
  }
  return [];
}

function attempt<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof Fault) return undefined;
    throw error;
  }
}

/** `Each side holds Mn 2, C 10, O 28, H 16; charge 4+.` */
function sumOf({ left }: Equation): string {
  const sums = new Map<string, Rational>();
  const add = ({ coefficient, formula }: Term): void => {
    for (const [component, count] of composition(formula))
      sums.set(component, (sums.get(component) ?? Rational.zero).plus(coefficient.times(Rational.of(count))));
  };
  left.forEach(add);
  const charge = Number((sums.get(CHARGE) ?? Rational.zero).n);
  const atoms = [...sums].flatMap(([component, sum]) => (component === CHARGE ? [] : `${component} ${sum}`));
  return `Each side holds ${atoms.join(', ')}; charge ${charge === 0 ? '0' : chargeText(charge)}.`;
}
