import type { PlainBlock, PlainDocument, PlainInline, PlainQuestion, PlainTable } from '../plain.ts';
import { runText } from './inline-text.ts';
import { type Token, tokensOf } from './tokens.ts';

/** A table as read: the cells of each row. */
export interface ReadTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly (readonly Token[])[])[];
}

export interface ReadPart {
  /** `a`, or nothing when the question has one part */
  readonly letter: string;
  readonly marks: number;
  /** the prompt, then hints: what is read before answering */
  readonly prose: readonly (readonly Token[])[];
  readonly proseText: string;
  /** lines that the sheet prints for the pupil */
  readonly given: readonly { readonly left: readonly Token[]; readonly right: readonly Token[] }[];
  readonly options: readonly { readonly letter: string; readonly content: readonly Token[] }[];
  /** unit that stands on the answer line, when it is a figure that is asked */
  readonly unit: string | undefined;
  /** marks that a working box is made for */
  readonly spaceMarks: number | undefined;
  /** everything in the answer space that can be read */
  readonly space: readonly Token[];
}

export interface ReadQuestion {
  readonly number: number;
  readonly code: string;
  readonly marks: number;
  readonly stem: readonly (readonly Token[])[];
  readonly stemText: string;
  readonly tables: readonly ReadTable[];
  /** labels of figures, and what is told of them to those who cannot see them */
  readonly figures: { readonly labels: readonly Token[]; readonly alt: string };
  readonly caution: string;
  readonly parts: readonly ReadPart[];
}

/** A worked example that stands before a question: another question of its kind, with every line printed. */
export interface ReadExample {
  /** number of the question that it stands before */
  readonly before: number;
  readonly question: ReadQuestion;
}

export interface ReadSheet {
  readonly title: string;
  readonly facts: readonly string[];
  readonly cells: readonly string[];
  /** cautions that stand once, at the head of the sheet */
  readonly caution: string;
  readonly questions: readonly ReadQuestion[];
  readonly examples: readonly ReadExample[];
}

export function readSheet({ blocks }: PlainDocument): ReadSheet {
  const head = blocks.find((block) => block.kind === 'head');
  return {
    title: head?.title ?? '',
    facts: head?.facts ?? [],
    cells: head?.cells ?? [],
    caution: cautionIn(blocks),
    questions: blocks.flatMap((block) => (block.kind === 'question' ? [readQuestion(block)] : [])),
    examples: blocks.flatMap((block) => {
      const before = block.kind === 'given' ? /^Worked example for question (\d+)$/.exec(block.caption)?.[1] : undefined;
      return block.kind === 'given' && before !== undefined ? [readExample(Number(before), block.blocks)] : [];
    }),
  };
}

const cautionIn = (blocks: readonly PlainBlock[]): string =>
  blocks.map((block) => (block.kind === 'paragraph' && block.weight === 'caution' ? runText(block.content) : '')).join('');

function readQuestion({ number, code, marks, stem, parts }: PlainQuestion): ReadQuestion {
  const prose = proseIn(stem);
  return {
    number,
    code,
    marks,
    stem: prose.map(tokensOf),
    stemText: prose.map(runText).join('\n'),
    tables: tablesIn(stem),
    figures: figuresIn(stem),
    caution: cautionIn(stem),
    parts: parts.map(readPart),
  };
}

/** A prompt is a paragraph with a light one, the principle, right after it; what stands before the first is the stem. */
function readExample(before: number, blocks: readonly PlainBlock[]): ReadExample {
  const isLight = (block: PlainBlock | undefined) => block?.kind === 'paragraph' && block.weight === 'light';
  const starts = blocks.flatMap((block, at) =>
    block.kind === 'paragraph' && !isLight(block) && isLight(blocks[at + 1]) ? [at] : [],
  );
  const stem = blocks.slice(0, starts[0] ?? blocks.length);
  const parts = starts.map((start, at) => {
    const own = blocks.slice(start, starts[at + 1] ?? blocks.length).filter((block) => !isLight(block));
    const lines = own.map((block) =>
      block.kind === 'display' ? ({ kind: 'paragraph', weight: 'light', content: bareAnswer(block.content) } as const) : block,
    );
    const letter = printedLetter(own[0]) ?? 'abcdefgh'[at]!;
    return { kind: 'part', letter, marks: 0, blocks: lines } as const;
  });
  return { before, question: readQuestion({ kind: 'question', number: before, code: '', marks: 0, stem, parts }) };
}

/** The letter that stands in front of a part of an example. */
function printedLetter(block: PlainBlock | undefined): string | undefined {
  const first = block?.kind === 'paragraph' ? block.content[0] : undefined;
  return first?.kind === 'text' && first.weight === 'strong' ? /^([a-p])\s$/.exec(first.text)?.[1] : undefined;
}

/** An answer without the label before it (`V^2+: +2`), and a sentence as words: no capital, no stop. */
function bareAnswer(content: readonly PlainInline[]): PlainInline[] {
  const isSentence = textOf(content.at(-1)).endsWith('.');
  const sign = isSentence ? -1 : content.findLastIndex((inline) => inline.kind === 'text' && /^(: | )$/.test(inline.text));
  const isLabelled = sign > 0 && (content[sign] as { text: string }).text === ': ';
  const isEquated = sign > 0 && /=\s*$/.test(textOf(content[sign - 1]));
  const [first, ...rest] = isLabelled || isEquated ? content.slice(sign + 1) : content;
  if (first?.kind !== 'text') return [...(first ? [first] : []), ...rest];
  const said = [{ ...first, text: first.text.charAt(0).toLowerCase() + first.text.slice(1) }, ...rest];
  return textOf(said.at(-1)) === '.' ? said.slice(0, -1) : said;
}

const textOf = (inline: PlainInline | undefined): string => (inline?.kind === 'text' ? inline.text : '');

/** Everything that is lettered in figures, wherever it stands in their drawing. */
function figuresIn(blocks: readonly PlainBlock[]): ReadQuestion['figures'] {
  const figures = blocks.flatMap((block) =>
    block.kind === 'figure' ? [block] : block.kind === 'given' ? block.blocks.filter(isFigure) : [],
  );
  return {
    labels: figures.flatMap(({ figure, caption }) => [...letteringIn(figure), ...tokensOf(caption ?? [])]),
    alt: figures.map(({ figure }) => figure.alt).join('\n'),
  };
}

type FigureBlock = Extract<PlainBlock, { kind: 'figure' }>;
const isFigure = (block: PlainBlock): block is FigureBlock => block.kind === 'figure';
const INLINES: readonly unknown[] = ['text', 'formula', 'equation', 'quantity', 'symbol', 'fraction', 'gap'];

function letteringIn(value: unknown): Token[] {
  if (Array.isArray(value)) {
    const isRun = value.length > 0 && value.every((each) => INLINES.includes((each as { kind?: unknown } | null)?.kind));
    return isRun ? tokensOf(value as PlainInline[]) : value.flatMap(letteringIn);
  }
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(letteringIn) : [];
}

/** Paragraphs and displayed lines of a stem, those in its ruled block included. */
function proseIn(blocks: readonly PlainBlock[]): (readonly PlainInline[])[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'given') return proseIn(block.blocks);
    const isProse = block.kind === 'display' || (block.kind === 'paragraph' && block.weight !== 'caution');
    return isProse ? [block.content] : [];
  });
}

function readPart({ letter, marks, blocks }: PlainQuestion['parts'][number]): ReadPart {
  const prose = blocks.flatMap((block) => (block.kind === 'paragraph' && !isGiven(block) ? [block.content] : []));
  const space = blocks.find((block) => block.kind === 'answer')?.space;
  return {
    letter: letter ?? '',
    marks,
    prose: prose.map(tokensOf),
    proseText: prose.map(runText).join('\n'),
    given: blocks.flatMap((block) => {
      if (block.kind === 'working') return block.lines.map(readLine);
      return block.kind === 'paragraph' && isGiven(block) ? [{ left: [], right: tokensOf(block.content) }] : [];
    }),
    options: blocks.flatMap((block) =>
      block.kind === 'options'
        ? block.options.map(({ letter: at, content }) => ({ letter: at, content: tokensOf(content) }))
        : [],
    ),
    unit: space?.kind === 'working' ? space.unit : undefined,
    spaceMarks: space?.kind === 'working' ? space.marks : undefined,
    space: space ? tokensOf(inSpace(space)) : [],
  };
}

/** An answer that is printed for the pupil: a light paragraph; a hint, light too, begins with a word that carries weight. */
function isGiven({ content, weight }: Extract<PlainBlock, { kind: 'paragraph' }>): boolean {
  const [first] = content;
  return weight === 'light' && !(first?.kind === 'text' && first.weight === 'strong');
}

export function readLine(line: { readonly left: readonly PlainInline[]; readonly right: readonly PlainInline[] }): {
  left: Token[];
  right: Token[];
} {
  return { left: tokensOf(line.left), right: tokensOf(line.right) };
}

function inSpace(space: Extract<PlainBlock, { kind: 'answer' }>['space']): readonly PlainInline[] {
  if (space.kind === 'working') return space.symbol;
  if (space.kind === 'short') return space.labels.flat();
  return space.kind === 'table' ? [...space.table.header, ...space.table.rows.flat()].flat() : [];
}

/** Tables of a stem, those in its ruled block included. */
export function tablesIn(blocks: readonly PlainBlock[]): ReadTable[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'given') return tablesIn(block.blocks);
    return block.kind === 'table' ? [readTable(block)] : [];
  });
}

function readTable({ header, rows }: PlainTable): ReadTable {
  return { header: header.map(runText), rows: rows.map((cells) => cells.map(tokensOf)) };
}
