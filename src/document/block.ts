import type { Figure } from './figure.ts';
import type { Axis } from './figures/axes-figure.ts';
import type { Inline, Role } from './inline.ts';

/** One block of a document. A printer has a handler for each kind and refuses any other. */
export type Block =
  | Paragraph
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly content: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Block[])[] }
  | Table
  /** lightly ruled block that holds what is given; kept whole; `caption` is a short label */
  | { readonly kind: 'given'; readonly caption: string; readonly blocks: readonly Block[] }
  /** a displayed equation or expression on its own line */
  | { readonly kind: 'display'; readonly content: readonly Inline[] }
  /** steps of a worked answer, equals signs aligned: left = right */
  | { readonly kind: 'working'; readonly lines: readonly WorkingLine[] }
  | { readonly kind: 'figure'; readonly figure: Figure; readonly caption?: readonly Inline[] }
  | AnswerBlock
  | { readonly kind: 'options'; readonly options: readonly Option[] }
  | QuestionBlock
  | PartBlock
  | SchemeBlock
  /** head of a sheet: title, one line of facts, ruled cells to fill in at the right */
  | {
      readonly kind: 'head';
      readonly title: string;
      readonly facts: readonly string[];
      readonly cells: readonly string[];
      readonly note?: readonly Inline[];
    }
  /** short facts in a ruled strip: label and value */
  | { readonly kind: 'strip'; readonly facts: readonly { readonly label: string; readonly value: readonly Inline[] }[] }
  | { readonly kind: 'small-print'; readonly paragraphs: readonly (readonly Inline[])[] }
  | { readonly kind: 'page-break' };

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly content: readonly Inline[];
  readonly weight?: 'light' | 'caution';
}

export interface Table {
  readonly kind: 'table';
  /** spoken summary for those who cannot see it; gives no answer away */
  readonly summary: string;
  readonly header: readonly (readonly Inline[])[];
  readonly rows: readonly (readonly (readonly Inline[])[])[];
  /** first cell of each row is a row header */
  readonly rowHeaders: boolean;
  readonly align: readonly ('start' | 'end' | 'middle')[];
  /** relative column widths; the table takes its natural width when absent */
  readonly widths?: readonly number[];
  /** a long list of little: paper may show it in several columns, one beside the other */
  readonly folds?: true;
  /** set small where the print is not large, to save paper */
  readonly small?: true;
  /** never parted by a page turn, such as what is cut out, unless no page can hold it */
  readonly whole?: true;
}

export interface WorkingLine {
  readonly left: readonly Inline[];
  readonly right: readonly Inline[];
}

/** Room to answer in. Heights follow the marks (see the printer). */
export type AnswerSpace =
  /** dotted rules for words */
  | { readonly kind: 'lines'; readonly count: number }
  /** open box for working, ending in an answer line: symbol = …… unit */
  | { readonly kind: 'working'; readonly marks: number; readonly symbol: readonly Inline[]; readonly unit: string }
  /** lines for equations with the arrow standing */
  | { readonly kind: 'equation'; readonly arrow: 'forward' | 'reversible'; readonly count: number }
  /** short labelled lines: one gap for each label */
  | { readonly kind: 'short'; readonly labels: readonly (readonly Inline[])[] }
  | { readonly kind: 'table'; readonly table: Table }
  /** squared grid to plot on, in centimetre squares; its axes printed or left to the pupil */
  | { readonly kind: 'grid'; readonly across: number; readonly down: number; readonly axes?: GridAxes }
  | { readonly kind: 'none' };

/** Axes that stand at a grid: what goes along and upwards, each with or without its figures. */
export interface GridAxes {
  readonly x: Omit<Axis, 'squares'>;
  readonly y: Omit<Axis, 'squares'>;
}

export interface AnswerBlock {
  readonly kind: 'answer';
  readonly space: AnswerSpace;
  /** what stands in the space on a teacher copy, which is as high as without it; a sheet for pupils never carries it */
  readonly filled?: Filled;
}

export interface Filled {
  readonly working: readonly WorkingLine[];
  /** `worked` when a line of the working ends in it */
  readonly answers: readonly { readonly content: readonly Inline[]; readonly worked: boolean }[];
}

export interface Option {
  readonly letter: string;
  readonly content: readonly Inline[];
  /** on a teacher copy: the ring is filled */
  readonly right?: true;
}

/** A question: a hanging number, its stem and data, then its parts. Kept together where a page can hold it. */
export interface QuestionBlock {
  readonly kind: 'question';
  readonly number: number;
  /** regenerates the question; printed very small in the foot of its page */
  readonly code: string;
  readonly marks: number;
  readonly stem: readonly Block[];
  readonly parts: readonly PartBlock[];
}

/** A part: a hanging letter (absent when a question has only one), prompt, answer space, and the marking cell in the right margin. */
export interface PartBlock {
  readonly kind: 'part';
  readonly letter?: string;
  readonly marks: number;
  readonly blocks: readonly Block[];
}

/** One question or part in the mark scheme. */
export interface SchemeBlock {
  readonly kind: 'scheme';
  /** `2b`, or `3` for a question with one part */
  readonly label: string;
  readonly marks: number;
  readonly answer: readonly (readonly Inline[])[];
  /** step that each answer is the value of; never printed, there for whoever checks a finished scheme */
  readonly roles?: readonly Role[];
  /** one line per mark, with a box to tick */
  readonly points: readonly SchemePoint[];
  readonly worked: readonly Block[];
  /** "if you see this" rows */
  readonly seen: readonly SchemeSeen[];
}

export interface SchemePoint {
  /** step and kind of the point, `equation:value`; never printed */
  readonly role?: Role;
  readonly earns: readonly Inline[];
  /** what is also right, what is not, what makes no difference; empty when nothing needs saying */
  readonly also: readonly (readonly Inline[])[];
  readonly not: readonly (readonly Inline[])[];
  readonly ignore: readonly (readonly Inline[])[];
  /** true when the mark is given for right work on a wrong figure from an earlier step */
  readonly carries: boolean;
  /** supports on which the step is printed for the pupil, so that the mark is not theirs to earn */
  readonly given?: readonly string[];
}

export interface SchemeSeen {
  /** misconceptions that lead to this, the one told first, then its aliases; never printed */
  readonly slips?: readonly Role[];
  /** what the pupil wrote */
  readonly wrote: readonly Inline[];
  /** what has happened, in a colleague's words */
  readonly happened: readonly Inline[];
  /** marks still earned in this part, and where it carries on */
  readonly earns: readonly Inline[];
}
