import { joined } from '../../chemistry/cell.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Decimal } from '../../exact/decimal.ts';
import { printNumber } from '../../exact/print-number.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import { inPlural, solutionName } from '../names.ts';
import type { Item } from '../question.ts';
import { solve } from '../solve.ts';
import { unitNames } from '../unit-names.ts';
import { ratioData } from './mole-ratio-data.ts';
import type { RatioDraw } from './mole-ratio-draw.ts';
import { nameOf, ratioParts } from './mole-ratio-parts.ts';
import { planOf, type RatioPlan, waterIn } from './mole-ratio-plan.ts';
import { ratioSlips } from './mole-ratio-slips.ts';
import { stemOf } from './mole-ratio-stem.ts';
import { lastStep, ratioSteps } from './mole-ratio-steps.ts';
import { ACIDS, acidFor } from './mole-ratio-substance.ts';

/** Builds the item of a reacting-amount question. */
export function buildRatio(drawn: RatioDraw, tables: Tables, ask: Ask, words: Words): Built {
  const plan = planOf(drawn);
  const units = unitNames(ask.units);
  const context = contextOf(plan, tables, units);
  const steps = ratioSteps(plan, tables, words, units);
  const data = ratioData(plan, tables, units);
  const values = solve({ data, steps, parts: [] }, 'printed');
  const key = `${drawn.oxidant.id} ${drawn.reductant.id}`;
  const item: Item = {
    strategy: 'reacting amounts',
    features: featuresOf(plan),
    identity: `${key} ${nameOf(plan)}`,
    stem: stemOf(plan, tables, words, context, units),
    data,
    steps,
    parts: ratioParts(plan, words, context, values, units.volume),
    slips: ratioSlips(plan, tables, words, {
      ...context,
      volume: quantity('', units.volume),
      afterEquation: ask.answering === 'written' && plan.equationPart !== undefined,
    }),
    gives: givesOf(drawn, key),
    asks: [`ratio:${key}`, ...(drawn.told === 'equation' ? [] : [`eq:${key}`])],
    cautions: drawn.cautions,
  };
  const step = drawn.choosesRatio ? 'ratio' : lastStep(plan);
  const prompt = words.inline(drawn.choosesRatio ? 'choice-ratio' : `choice-${drawn.found.measure}`, context);
  return { item, choice: { step, prompt, most: 3, objective: 'application', maths: drawn.choosesRatio ? 0 : 1, practical: 1 } };
}

function givesOf({ told, oxidant, reductant }: RatioDraw, key: string): string[] {
  if (told === 'equation') return [`eq:${key}`];
  return told === 'half-equations' ? [oxidant, reductant].map(({ id }) => `half:${id}`) : [];
}

function contextOf(plan: RatioPlan, tables: Tables, units: ReturnType<typeof unitNames>): WordsContext {
  const { drawn, known, found } = plan;
  const printed = (value: Decimal | undefined, unit: string): Inline => (value ? quantity(printNumber(value), unit) : text(''));
  const { oxidant, reductant } = drawn;
  return {
    known: species(known.species),
    found: species(found.species),
    knownName: inPlural(drawn.known.key, tables),
    foundName: inPlural(drawn.found.key, tables),
    knownSalt: drawn.known.salt.name,
    foundSalt: drawn.found.salt.name,
    knownSaltFormula: species(known.salt),
    foundSaltFormula: species(found.salt),
    knownIsSalt: plan.weighsKnown && !known.isMetal,
    foundIsSalt: plan.weighsFound && !found.isMetal,
    knownSolution: solutionName(known.salt, tables),
    foundSolution: solutionName(found.salt, tables),
    amount: plan.weighsKnown ? printed(drawn.mass, 'g') : printed(drawn.volume, units.volume),
    unit: quantity('', units.volume),
    inAcid: drawn.medium === 'acid',
    acid: ACIDS[acidFor(drawn)],
    condition: drawn.condition,
    oxidant: species(bareOf(plan, 'oxidant', 'from')),
    oxidantReduced: species(bareOf(plan, 'oxidant', 'to')),
    reductant: species(bareOf(plan, 'reductant', 'from')),
    reductantOxidised: species(bareOf(plan, 'reductant', 'to')),
    oxidantName: inPlural(oxidant.oxidisedKey, tables),
    reductantName: inPlural(reductant.reducedKey, tables),
  };
}

function bareOf({ drawn }: RatioPlan, who: 'oxidant' | 'reductant', when: 'from' | 'to') {
  const { oxidised, reduced } = drawn[who];
  const { state: _, ...formula } = (who === 'oxidant') === (when === 'from') ? oxidised : reduced;
  return formula;
}

function featuresOf({ drawn, known, found, weighsKnown, weighsFound }: RatioPlan): Record<string, string> {
  const { equation: whole } = joined(drawn.oxidant, drawn.reductant);
  const weighs = (isWeighed: boolean, isMetal: boolean) => (!isWeighed ? 'solution' : isMetal ? 'metal' : 'salt');
  const water = (weighsKnown && waterIn(known.salt) > 0) || (weighsFound && waterIn(found.salt) > 0);
  return {
    told: drawn.told,
    known: weighs(weighsKnown, known.isMetal),
    asked: drawn.choosesRatio
      ? 'ratio'
      : drawn.found.measure === 'mass'
        ? weighs(weighsFound, found.isMetal)
        : drawn.found.measure,
    ratio: whole.left.every(({ coefficient }) => coefficient.n === 1n) ? 'one' : 'other',
    'water of crystallisation': water ? 'yes' : 'no',
    acid: drawn.medium,
  };
}
