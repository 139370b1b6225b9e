import { keyOf } from '../../chemistry/write-formula.ts';
import { species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import { inPlural } from '../names.ts';
import type { Item } from '../question.ts';
import type { HalfDraw } from './half-equation.ts';
import { halfContext, halfParts } from './half-equation-parts.ts';
import { halfSlips } from './half-equation-slips.ts';
import { changeIn, halfSteps } from './half-equation-steps.ts';

/** Builds the item: the easier half-equation, the harder one in steps, and at stretch what makes the oxidising agent one. */
export function buildHalf(drawn: HalfDraw, tables: Tables, { level, answering }: Ask, words: Words): Built {
  const { main, partner } = drawn;
  const isChoice = answering === 'choice';
  const direction = main.isReduction ? 'reduction' : 'oxidation';
  const item: Item = {
    strategy: 'atoms, then charge',
    features: features(drawn, isChoice),
    identity: isChoice ? `${direction} ${main.couple.id}` : `${main.couple.id} (${direction}) ${partner.couple.id}`,
    stem: isChoice ? [] : words.blocks('stem', stemContext(drawn, tables, words)),
    data: [],
    steps: halfSteps(drawn, level, words),
    parts: halfParts(drawn, level, tables, words),
    slips: halfSlips(drawn, { level, answering }, tables, words),
    gives: [],
    asks: [main, ...(isChoice ? [] : [partner])].map(({ couple }) => `half:${couple.id}`),
    cautions: [],
  };
  const prompt = words.inline('choice', halfContext(main));
  return { item, choice: { step: 'half', prompt, most: 4, objective: 'application', maths: 0, practical: 0 } };
}

/** Demand features of a draw: equal features mean parallel questions. */
function features({ main, partner }: HalfDraw, isChoice: boolean): Record<string, string> {
  return {
    direction: main.isReduction ? 'reduction' : 'oxidation',
    medium: main.medium === 'acid' ? 'acid' : 'alkali',
    'atoms that change': changeIn(main).atoms === 1 ? 'one' : 'several',
    ...(isChoice ? {} : { partner: partner.isBuilt ? 'built' : 'simple' }),
  };
}

function stemContext({ pair, main, partner }: HalfDraw, tables: Tables, words: Words): WordsContext {
  const [oxidant, reductant] = main.isReduction ? [main, partner] : [partner, main];
  const name = inPlural(keyOf(oxidant.subject), tables);
  return {
    oxidant: species(oxidant.subject),
    reductant: species(reductant.subject),
    oxidantName: name,
    oxidantCapital: `${name[0]!.toUpperCase()}${name.slice(1)}`,
    reductantName: inPlural(keyOf(reductant.subject), tables),
    oxidantProduct: species(oxidant.product),
    reductantProduct: species(reductant.product),
    where: words.inline('where', { inAcid: pair.medium === 'acid', isWarm: pair.needs === 'warm' }),
    isSlow: pair.needs === 'time',
  };
}
