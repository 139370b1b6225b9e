import type { Tables } from '../../potentials/tables.ts';
import type { Item } from '../question.ts';
import { rowsOf } from '../rows.ts';
import { solve } from '../solve.ts';
import { cautionsStand } from './cautions-stand.ts';
import { choiceIsFair } from './choice-is-fair.ts';
import { equationsBalance } from './equations-balance.ts';
import { figuresSuffice } from './figures-suffice.ts';
import { marksAddUp } from './marks-add-up.ts';
import { noLeak } from './no-leak.ts';
import { nothingMissing } from './nothing-missing.ts';
import { oneCommandWord } from './one-command-word.ts';
import { optionsCouldBeChosen } from './options-could-be-chosen.ts';
import { rowsAreWrong } from './rows-are-wrong.ts';
import type { GateFailure, GateRule } from './rule.ts';
import { stepsInOrder } from './steps-in-order.ts';
import { workingRecomputes } from './working-recomputes.ts';

/** The rules, in the order they are tried: structure first, because later rules rely on it. */
export const GATE_RULES: readonly GateRule[] = [
  stepsInOrder,
  marksAddUp,
  oneCommandWord,
  equationsBalance,
  workingRecomputes,
  figuresSuffice,
  rowsAreWrong,
  noLeak,
  nothingMissing,
  cautionsStand,
  choiceIsFair,
  optionsCouldBeChosen,
];

/** Checks a finished item by paths that share nothing with the family that made it. @returns what is wrong; empty when it may be printed */
export function gate(item: Item, tables: Tables): GateFailure[] {
  const structural = stepsInOrder.check({ item, tables, values: new Map(), rows: [] });
  if (structural.length > 0) return structural.map((problem) => ({ rule: stepsInOrder.id, problem }));
  const gated = { item, tables, values: solve(item), rows: rowsOf(item) };
  return GATE_RULES.flatMap((rule) => rule.check(gated).map((problem) => ({ rule: rule.id, problem })));
}
