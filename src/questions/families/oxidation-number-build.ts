import type { Formula } from '../../chemistry/formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Block } from '../../document/block.ts';
import { equation, species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import type { Item } from '../question.ts';
import type { NumberDraw } from './oxidation-number.ts';
import { ligandNotes } from './oxidation-number-ligands.ts';
import { numberParts } from './oxidation-number-parts.ts';
import { numberSlips } from './oxidation-number-slips.ts';
import type { Wanted } from './oxidation-number-species.ts';
import { numberAt, numberSteps } from './oxidation-number-steps.ts';

/** Builds the item: three species, then a reaction. As a choice only the third species is asked, and nothing else is printed. */
export function buildOxidationNumber(drawn: NumberDraw, tables: Tables, { level, answering }: Ask, words: Words): Built {
  const { wanted, reaction } = drawn;
  const last = wanted[2];
  const context: WordsContext = {
    equation: equation(reaction.equation),
    oxidant: species(reaction.before.formula),
    reductant: species(reaction.reductant),
    reductantName: tables.speciesOf(keyOf(reaction.reductant)).name,
  };
  const isChoice = answering === 'choice';
  const item: Item = {
    strategy: 'sum of oxidation numbers',
    features: isChoice ? { species: last.kind } : features(drawn),
    identity: isChoice
      ? factOf(last)
      : [...wanted.map(factOf), `${reaction.pair.oxidant.id} ${reaction.pair.reductant.id}`].join(' | '),
    stem: isChoice ? notesOf([last], words) : stemOf(drawn, context, words),
    data: [],
    steps: numberSteps(drawn, level, words),
    parts: numberParts(drawn, level, context, words),
    slips: numberSlips(drawn, level, tables, words),
    gives: isChoice ? [] : [`eq:${reaction.pair.oxidant.id} ${reaction.pair.reductant.id}`],
    asks: isChoice ? factsOf(last) : [...wanted.flatMap(factsOf), `on:${reaction.element}@${keyOf(reaction.before.formula)}`],
    cautions: [],
  };
  return {
    item,
    choice: {
      step: numberAt(2),
      prompt: words.inline('choice', {
        element: last.name,
        formula: species(last.formula),
        isAverage: last.states !== undefined,
      }),
      most: 4,
      objective: 'application',
      maths: 0,
      practical: 0,
    },
  };
}

/** What is asked, and of an alkali metal's salt also what its ion would ask: a sheet that has one seldom wants the other. */
function factsOf({ element, formula }: Wanted): string[] {
  return [formula, ...anionOf(formula)].map((each) => `on:${element}@${keyOf(each)}`);
}

/** `S₂O₈²⁻` of `K₂S₂O₈`; nothing of what is no such salt. */
function anionOf({ units: [unit], charge }: Formula): Formula[] {
  const [metal, ...rest] = unit?.nodes ?? [];
  const isSalt = charge === 0 && rest.length > 0 && metal?.kind === 'element' && ALKALI_METALS.includes(metal.symbol);
  return isSalt ? [{ units: [{ count: 1, nodes: rest }], charge: -metal.count }] : [];
}

const ALKALI_METALS: readonly string[] = ['Li', 'Na', 'K'];

const factOf = ({ element, formula }: Wanted): string => `on:${element}@${keyOf(formula)}`;

/** Demand features of a draw: equal features mean parallel questions. */
function features({ wanted, reaction }: NumberDraw): Record<string, string> {
  return {
    species: wanted.map(({ kind }) => kind).join(', '),
    reaction: reaction.pair.medium === 'acid' || reaction.pair.medium === 'neutral' ? 'in water' : 'in alkali',
    electrons: reaction.atoms === 1 ? 'one atom' : 'several atoms',
  };
}

function stemOf({ wanted }: NumberDraw, context: WordsContext, words: Words): Block[] {
  return [
    ...words.blocks('stem', context),
    { kind: 'display', content: words.inline('reaction', context) },
    ...notesOf(wanted, words),
  ];
}

/** What a formula does not show: a bond between oxygens, and what a less usual ligand is. */
function notesOf(wanted: readonly Wanted[], words: Words): Block[] {
  return [...peroxoNote(wanted, words), ...wanted.flatMap(({ formula }) => ligandNotes(formula, words))];
}

function peroxoNote(wanted: readonly Wanted[], words: Words): Block[] {
  return wanted
    .filter(({ kind }) => kind === 'peroxo ion')
    .flatMap(({ formula }) => words.blocks('peroxo', { formula: species(formula) }));
}
