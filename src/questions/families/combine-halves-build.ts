import { elementsIn, totalAtoms } from '../../chemistry/composition.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { reverseEquation } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Block, Table } from '../../document/block.ts';
import { equation, quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { printDecimal } from '../../exact/decimal.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import { inPlural } from '../names.ts';
import { potentialTable } from '../potential-table.ts';
import type { Datum, Item } from '../question.ts';
import { bare } from '../without-states.ts';
import type { CombineDraw } from './combine-halves.ts';
import { type CombineFacts, cancelling, combineFacts } from './combine-halves-facts.ts';
import { combineParts } from './combine-halves-parts.ts';
import { combineSlips } from './combine-halves-slips.ts';
import { combineSteps } from './combine-halves-steps.ts';
import { sharesSpecies } from './reacting-pairs.ts';

/** Builds the item: half-equations on the page, factors, direction, equation, agents. */
export function buildCombination(drawn: CombineDraw, tables: Tables, { answering }: Ask, words: Words): Built {
  // Options have letters of their own, so half-equations beside them are numbered.
  const facts = combineFacts(drawn, answering === 'choice' ? ['1', '2'] : ['A', 'B']);
  const context = contextOf(facts, tables, words);
  const { oxidant, reductant } = drawn.pair;
  const item: Item = {
    strategy: 'electrons given equal electrons taken',
    features: features(facts),
    identity: `${oxidant.id} ${reductant.id}`,
    stem: stemOf(facts, context, words),
    data: drawn.given === 'with potentials' ? facts.halves.map(datumOf) : [],
    steps: combineSteps(facts, words),
    parts: combineParts(facts, context, tables, words),
    slips: combineSlips(facts, tables, words, answering),
    gives: [`half:${oxidant.id}`, `half:${reductant.id}`],
    asks: [`eq:${oxidant.id} ${reductant.id}`],
    cautions: [],
  };
  const prompt = words.inline(drawn.given === 'with potentials' ? 'choice-stretch' : 'choice', context);
  // The choice is about the equation alone; who is the agent is no step on the way to it.
  return { item, choice: { step: 'equation', prompt, most: 4, objective: 'application', maths: 0, practical: 0 } };
}

function contextOf({ oxidant, reductant, drawn, reduced, oxidised }: CombineFacts, tables: Tables, words: Words): WordsContext {
  const { oxidant: higher, reductant: lower, medium, needs } = drawn.pair;
  const volts = ({ printed }: typeof higher) => quantity(printDecimal(printed, true), 'V');
  return {
    oxidant: species(oxidant),
    reductant: species(reductant),
    oxidantName: inPlural(keyOf(oxidant), tables),
    oxidantCapital: capital(inPlural(keyOf(oxidant), tables)),
    reductantName: inPlural(keyOf(reductant), tables),
    oxidantProduct: species(bare(higher.reduced)),
    reductantProduct: species(bare(lower.oxidised)),
    agentIsAtom: isAtom(oxidant) && !isElement(bare(higher.reduced)),
    agentIsOther: !isAtom(oxidant) && !isElement(oxidant),
    reduced: reduced.label,
    oxidised: oxidised.label,
    high: volts(higher),
    low: volts(lower),
    where: words.inline('where', {
      inAcid: medium === 'acid',
      inAlkali: medium === 'alkali' || medium === 'strong-alkali',
      isWarm: needs === 'warm',
    }),
    isSlow: needs === 'time',
  };
}

/** One element without a charge: Br₂, Cu. */
const isElement = (formula: Formula): boolean => formula.charge === 0 && elementsIn(formula).length === 1;
/** One atom with a charge: Fe³⁺. */
const isAtom = (formula: Formula): boolean => formula.charge !== 0 && totalAtoms(formula) === 1;

const capital = (words: string): string => `${words[0]!.toUpperCase()}${words.slice(1)}`;

function datumOf({ label, couple, datum }: CombineFacts['reduced']): Datum {
  return {
    id: datum,
    role: `standard electrode potential of half-equation ${label}`,
    value: { kind: 'number', value: couple.printed.value, unit: 'V', signed: true },
    printed: { dp: 2 },
  };
}

/** Demand features of a draw: equal features mean parallel questions. */
function features(facts: CombineFacts): Record<string, string> {
  const { drawn, combined } = facts;
  const { timesReduction, timesOxidation } = combined;
  const isOne = [timesReduction, timesOxidation].map((times) => times.toString() === '1');
  return {
    given: drawn.given,
    'electron ratio': isOne.every(Boolean) ? 'equal' : isOne.some(Boolean) ? 'multiple' : 'awkward',
    cancelling: cancelling(facts).length > 0 ? 'yes' : 'no',
    medium: drawn.pair.medium === 'acid' || drawn.pair.medium === 'neutral' ? 'acid or neutral' : 'alkali',
    'one element': sharesSpecies(drawn.pair) ? 'yes' : 'no',
  };
}

function stemOf(facts: CombineFacts, context: WordsContext, words: Words): Block[] {
  const { given } = facts.drawn;
  const section = given === 'with potentials' ? 'stem-potentials' : given === 'as they run' ? 'stem-run' : 'stem';
  return [...words.blocks(section, context), { kind: 'given', caption: 'Half-equations', blocks: [tableOf(facts)] }];
}

/** Half-equations with their labels: as they run with →, else as reductions with ⇌, and with potentials where those decide. */
function tableOf({ drawn, halves, oxidised }: CombineFacts): Table {
  if (drawn.given === 'with potentials') {
    return potentialTable(
      halves.map(({ label, couple, datum }) => ({ couple, datum, before: [[text(label)]] })),
      [''],
    );
  }
  const runs = drawn.given === 'as they run';
  return {
    kind: 'table',
    summary: 'Two half-equations with their labels',
    header: [[text('')], [text('Half-equation')]],
    rows: halves.map((half) => [
      [text(half.label)],
      [
        equation(
          runs && half === oxidised ? reverseEquation(half.couple.half) : half.couple.half,
          runs ? 'forward' : 'reversible',
        ),
      ],
    ]),
    rowHeaders: true,
    align: ['start', 'start'],
  };
}
