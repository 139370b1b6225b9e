import type { Block } from '../../document/block.ts';
import { text } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Words } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { ChoiceAsk } from '../choice.ts';
import { minus, node } from '../expression.ts';
import type { Ask, Built } from '../family.ts';
import { numberStep } from '../number-step.ts';
import { potentialTable } from '../potential-table.ts';
import type { Datum, Item, Step } from '../question.ts';
import type { CellDraw } from './cell-emf.ts';
import { cellOf } from './cell-emf-cell.ts';
import { type CellFacts, cellFacts } from './cell-emf-facts.ts';
import { drawnCell } from './cell-emf-figure.ts';
import { cellParts } from './cell-emf-parts.ts';
import { cellSlips, emfSlips } from './cell-emf-slips.ts';
import { cellSteps } from './cell-emf-steps.ts';

/** Builds the item of a cell: data, steps, parts and slips. */
export function buildCell(drawn: CellDraw, tables: Tables, ask: Ask, words: Words): Built {
  const isChoice = ask.answering === 'choice';
  const facts = cellFacts(drawn, isChoice);
  const emf = emfStep(facts);
  const item: Item = {
    strategy: 'difference of potentials',
    features: features(facts, drawn, ask),
    identity: [drawn.first.id, drawn.second.id].sort().join(' | '),
    stem: stemOf(drawn, facts, tables, words, ask),
    data: dataOf(facts),
    gives: facts.printed.map(({ couple }) => `half:${couple.id}`),
    cautions: [],
    steps: [emf, ...cellSteps(facts, words, ask)],
    parts: cellParts(facts, words, ask),
    slips: [...emfSlips(facts, tables, words), ...cellSlips(facts, tables, words, ask)],
    asks: [`emf:${facts.key}`, `eq:${facts.positive.couple.id} ${facts.negative.couple.id}`],
  };
  return { item, choice: choiceOf(facts, words, ask) };
}

/** Core asks for the e.m.f.; stretch for the equation, which needs both the direction and the factors. */
function choiceOf({ labels }: CellFacts, words: Words, { level }: Ask): ChoiceAsk {
  return level === 'core'
    ? { step: 'emf', prompt: words.inline('choice', labels), most: 3, objective: 'application', maths: 1, practical: 0 }
    : {
        step: 'equation',
        prompt: words.inline('choice-equation', labels),
        most: 4,
        objective: 'analysis',
        maths: 0,
        practical: 0,
      };
}

/** E°cell from the two printed values. */
function emfStep({ positive, negative }: CellFacts): Step {
  return numberStep({
    id: 'emf',
    part: 'a',
    principle: 'standard cell potential = more positive electrode potential minus less positive',
    expression: minus(node(positive.datum), node(negative.datum)),
    unit: 'V',
    signed: true,
    printed: { dp: 2 },
    left: [symbol('E°cell')],
    shown: () => ({ dp: 2 }),
  });
}

function dataOf({ cells, decoy }: CellFacts): Datum[] {
  return [...cells, ...(decoy ? [decoy] : [])].map((cell) => ({
    id: cell.datum,
    role: `standard electrode potential of half-cell ${cell.label}`,
    value: { kind: 'number', value: cell.couple.printed.value, unit: 'V', signed: true },
    printed: { dp: 2 },
    ...(cell === decoy ? { decoy: true as const } : {}),
  }));
}

function stemOf(drawn: CellDraw, facts: CellFacts, tables: Tables, words: Words, { answering }: Ask): Block[] {
  const rows = facts.printed.map(({ label, couple, datum }) => {
    const contents = cellOf(couple, tables)!;
    return { couple, datum, before: [[text(label)], words.inline(contents.section, contents.context)] };
  });
  return [
    ...words.blocks(drawn.decoy ? 'stem-decoy' : 'stem', facts.labels),
    // one mark is not worth a drawing's height
    ...(answering === 'written' ? [drawnCell(facts, tables)] : []),
    { kind: 'given', caption: 'Half-cells', blocks: [potentialTable(rows, ['', 'Electrode and solution'])] },
  ];
}

/** Demand features of a draw: equal features mean parallel questions. */
function features({ positive, negative }: CellFacts, drawn: CellDraw, ask: Ask): Record<string, string> {
  const [taken, given] = [positive.couple.half.electrons, negative.couple.half.electrons];
  const hasAcid = [positive, negative].some(({ couple }) => couple.medium === 'acid');
  return {
    acid: hasAcid ? 'acid' : 'none',
    'electron ratio': taken.equals(given)
      ? 'equal'
      : taken.over(given).isInteger() || given.over(taken).isInteger()
        ? 'multiple'
        : 'awkward',
    signs: `${positive.couple.printed.value.sign()} ${negative.couple.printed.value.sign()}`,
    decoy: drawn.decoy ? 'yes' : 'no',
    'ions in the bridge': ask.level === 'stretch' ? 'asked' : 'not asked',
  };
}
