import type { Couple } from '../../chemistry/couple.ts';
import type { Block } from '../../document/block.ts';
import type { Words } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { ChoiceAsk } from '../choice.ts';
import type { Ask, Built } from '../family.ts';
import { potentialTable } from '../potential-table.ts';
import type { Datum, Item } from '../question.ts';
import { datumOf, electronRatio, ranked } from './predict-reaction-context.ts';
import type { PairDraw, PredictDraw, ShelfDraw } from './predict-reaction-draw.ts';
import { pairIdentity, pairOf } from './predict-reaction-pair.ts';
import { pairParts } from './predict-reaction-pair-parts.ts';
import { pairSlips } from './predict-reaction-pair-slips.ts';
import { pairSteps, predictionStep } from './predict-reaction-pair-steps.ts';
import { shelfIdentity, shelfOf } from './predict-reaction-shelf.ts';
import { shelfParts } from './predict-reaction-shelf-parts.ts';
import { shelfSlips } from './predict-reaction-shelf-slips.ts';
import { shelfSteps } from './predict-reaction-shelf-steps.ts';

/** Builds the item: two species at core, one against three reagents at stretch. */
export function buildPrediction(drawn: PredictDraw, tables: Tables, ask: Ask, words: Words): Built {
  return drawn.shape === 'pair' ? buildPair(drawn, tables, ask, words) : buildShelf(drawn, tables, words);
}

function buildPair(draw: PairDraw, tables: Tables, ask: Ask, words: Words): Built {
  const pair = pairOf(draw, tables, words);
  const { high, low, kind, reacts, context } = pair;
  const isChoice = ask.answering === 'choice';
  const item: Item = {
    ...common([high, low]),
    features: {
      shape: kind === 'opposed' ? 'oxidant with reductant' : 'two of one kind',
      outcome: reacts ? 'reaction' : 'none',
      ...demand(high, low),
    },
    identity: pairIdentity(draw),
    stem: [...words.blocks('stem', context), given([high, low])],
    steps: [...pairSteps(pair), ...(isChoice ? [predictionStep(pair)] : [])],
    parts: pairParts(pair),
    slips: pairSlips(pair, tables, isChoice),
    asks: asked(high, low),
  };
  return { item, choice: chosenBy(words.inline('choice', context), 'prediction', pair.roles ? 1 : 0) };
}

function buildShelf(draw: ShelfDraw, tables: Tables, words: Words): Built {
  const shelf = shelfOf(draw, tables, words);
  const { subject, reacts, order, context } = shelf;
  const { high, low } = ranked(subject.couple, reacts.couple);
  const couples = [subject, ...order].map(({ couple }) => couple);
  const item: Item = {
    ...common(couples),
    features: { shape: 'one against three', outcome: 'reaction', ...demand(high, low) },
    identity: shelfIdentity(draw),
    stem: [...words.blocks('stem-shelf', context), given(couples)],
    steps: shelfSteps(shelf),
    parts: shelfParts(shelf),
    slips: shelfSlips(shelf, tables),
    asks: asked(high, low),
  };
  return { item, choice: chosenBy(words.inline('choice-shelf', context), 'reagent', 0) };
}

function common(couples: readonly Couple[]): Pick<Item, 'strategy' | 'data' | 'gives' | 'cautions'> {
  return {
    strategy: 'feasibility from potentials',
    data: couples.map(
      (couple): Datum => ({
        id: datumOf(couple),
        role: `standard electrode potential of ${couple.id}`,
        value: { kind: 'number', value: couple.printed.value, unit: 'V', signed: true },
        printed: { dp: 2 },
      }),
    ),
    gives: couples.map(({ id }) => `half:${id}`),
    // Nothing is done here: the question predicts.
    cautions: [],
  };
}

/** Every couple on the page, most negative first, so that place tells nothing. */
function given(couples: readonly Couple[]): Block {
  const rows = couples
    .toSorted((a, b) => a.printed.value.compare(b.printed.value))
    .map((couple) => ({ couple, before: [], datum: datumOf(couple) }));
  return { kind: 'given', caption: 'Standard electrode potentials', blocks: [potentialTable(rows)] };
}

function demand(high: Couple, low: Couple): Record<string, string> {
  return {
    acid: [high, low].some(({ medium }) => medium === 'acid') ? 'acid' : 'none',
    'electron ratio': electronRatio(high, low),
    signs: `${high.printed.value.sign()} ${low.printed.value.sign()}`,
  };
}

const asked = (high: Couple, low: Couple): string[] => [`emf:${[high.id, low.id].sort().join(' ')}`, `eq:${high.id} ${low.id}`];

function chosenBy(prompt: ChoiceAsk['prompt'], step: string, maths: 0 | 1): ChoiceAsk {
  return { step, prompt, most: 4, objective: 'analysis', maths, practical: 0 };
}
