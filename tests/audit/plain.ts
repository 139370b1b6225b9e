import type {
  Block,
  Option,
  PartBlock,
  QuestionBlock,
  SchemeBlock,
  SchemePoint,
  SchemeSeen,
  Table,
} from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import type { Inline } from '../../src/document/inline.ts';
import type { Rational } from '../../src/exact/rational.ts';

/** A tree as it comes out of JSON: exact numbers are text, `5` or `5/2`. All that the auditor is ever given. */
export type Plain<T> = T extends Rational
  ? string
  : T extends string | number | boolean | undefined
    ? T
    : T extends readonly (infer Each)[]
      ? readonly Plain<Each>[]
      : { readonly [Key in keyof T]: Plain<T[Key]> };

export type PlainDocument = Plain<Document>;
export type PlainBlock = Plain<Block>;
export type PlainInline = Plain<Inline>;
export type PlainTable = Plain<Table>;
export type PlainQuestion = Plain<QuestionBlock>;
export type PlainPart = Plain<PartBlock>;
export type PlainOption = Plain<Option>;
export type PlainScheme = Plain<SchemeBlock>;
export type PlainPoint = Plain<SchemePoint>;
export type PlainSeen = Plain<SchemeSeen>;

/** The two documents of one paper. */
export interface PaperDocuments {
  readonly sheet: PlainDocument;
  readonly scheme: PlainDocument;
}
