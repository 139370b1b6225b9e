import type { Tables } from '../../potentials/tables.ts';
import type { Item, Row } from '../question.ts';
import type { Values } from '../value.ts';

/** What a rule may look at: the item, its worked values and rows, and the tables in force. */
export interface Gated {
  readonly item: Item;
  readonly tables: Tables;
  /** worked in full */
  readonly values: Values;
  readonly rows: readonly Row[];
}

/** One thing that must hold before a question may be printed. */
export interface GateRule {
  readonly id: string;
  /** the rule in one sentence, for people */
  readonly holds: string;
  /** @returns what is wrong, one sentence each; empty when it holds */
  check(gated: Gated): string[];
}

export interface GateFailure {
  readonly rule: string;
  readonly problem: string;
}
