import type { Couple } from '../../chemistry/couple.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Block } from '../../document/block.ts';
import { species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import { inPlural } from '../names.ts';
import { potentialTable } from '../potential-table.ts';
import type { Datum, Item } from '../question.ts';
import type { Ladder } from './stepwise-ladder.ts';
import { ladderParts } from './stepwise-parts.ts';
import { planOf } from './stepwise-plan.ts';
import type { LadderDraw } from './stepwise-reduction.ts';
import { ladderSlips } from './stepwise-slips.ts';
import { datumOf, ladderSteps } from './stepwise-steps.ts';

/** Builds the item of a ladder. */
export function buildLadder({ ladder, decoys, cautions }: LadderDraw, tables: Tables, ask: Ask, words: Words): Built {
  const { level } = ask;
  const plan = planOf(ladder, ask);
  const context = contextOf(ladder, tables, words);
  const couples = printedCouples(ladder, decoys);
  const key = `${keyOf(ladder.start)} ${ladder.reagent.id}`;
  const all = [ladder.start, ...ladder.rungs.map(({ to }) => to)].map(keyOf);
  const item: Item = {
    strategy: 'ladder of potentials',
    features: {
      direction: ladder.isReduction ? 'reduction' : 'oxidation',
      steps: String(ladder.rungs.length),
      decoys: String(decoys.length),
      signposts: level === 'core' ? 'yes' : 'no',
      'what is seen': plan.sees ? 'colours' : ladder.isSeen ? 'not asked' : 'masked',
    },
    identity: key,
    stem: stemOf(couples, decoys.length > 0, context, words),
    data: couples.map(
      (couple): Datum => ({
        id: datumOf(couple),
        role: `standard electrode potential of ${couple.id}`,
        value: { kind: 'number', value: couple.printed.value, unit: 'V', signed: true },
        printed: { dp: 2 },
        ...(decoys.includes(couple) ? { decoy: true as const } : {}),
      }),
    ),
    steps: ladderSteps(ladder, plan, tables, words),
    parts: ladderParts(ladder, plan, context, tables, words),
    slips: ladderSlips(ladder, plan, tables, words, ask.answering === 'choice'),
    gives: couples.map(({ id }) => `half:${id}`),
    asks: [
      `ladder:${key}`,
      ...ladder.rungs.slice(0, 1).map(({ couple }) => equationFact(couple, ladder)),
      ...(plan.sees ? all.map((each) => `colour:${each}`) : []),
    ],
    cautions,
  };
  const prompt = words.inline('choice', context);
  return { item, choice: { step: 'final', prompt, most: 4, objective: 'analysis', maths: 0, practical: 1 } };
}

/** The first step as a fact: the couple that is reduced stands first, whichever of the two that is. */
function equationFact({ id }: Couple, { reagent, isReduction }: Ladder): string {
  return isReduction ? `eq:${id} ${reagent.id}` : `eq:${reagent.id} ${id}`;
}

/** Every couple on the page, most negative first, so that place tells nothing. */
function printedCouples({ rungs, next, reagent }: Ladder, decoys: readonly Couple[]): Couple[] {
  const all = [...rungs.map(({ couple }) => couple), next.couple, reagent, ...decoys];
  return all.sort((a, b) => a.printed.value.compare(b.printed.value) || (a.id < b.id ? -1 : 1));
}

function contextOf({ start, reacts, element, isReduction, rungs, product }: Ladder, tables: Tables, words: Words): WordsContext {
  const key = keyOf(reacts);
  const { role } = tables.speciesOf(key);
  const section = role === 'metal' || role === 'solid' ? 'reagent-metal' : role === 'gas' ? 'reagent-gas' : 'reagent-solution';
  return {
    start: species(start),
    startName: inPlural(keyOf(start), tables),
    reagent: words.inline(section, { name: inPlural(key, tables) }),
    reagentFormula: species(reacts),
    reagentProduct: species(product),
    next: species(rungs[0]!.to),
    element,
    isReduction,
  };
}

function stemOf(couples: readonly Couple[], hasDecoys: boolean, context: WordsContext, words: Words): Block[] {
  const rows = couples.map((couple) => ({ couple, before: [], datum: datumOf(couple) }));
  return [
    ...words.blocks(hasDecoys ? 'stem-decoys' : 'stem', context),
    { kind: 'given', caption: 'Standard electrode potentials', blocks: [potentialTable(rows)] },
  ];
}
