import type { AnswerSpace, Block } from '../../document/block.ts';
import type { Figure } from '../../document/figure.ts';
import type { Inline } from '../../document/inline.ts';

/** Every inline of some blocks, in reading order, fractions and arguments included. */
export function inlinesIn(blocks: readonly Block[]): Inline[] {
  return blocks.flatMap(inlinesOfBlock);
}

/** An inline and those inside it. */
export function withInner(inline: Inline): Inline[] {
  if (inline.kind === 'fraction') return [inline, ...[...inline.above, ...inline.below].flatMap(withInner)];
  if (inline.kind === 'symbol') return [inline, ...(inline.of ?? []).flatMap(withInner)];
  return [inline];
}

function inlinesOfBlock(block: Block): Inline[] {
  switch (block.kind) {
    case 'paragraph':
    case 'heading':
    case 'display':
      return block.content.flatMap(withInner);
    case 'list':
      return block.items.flatMap(inlinesIn);
    case 'table':
      return [...block.header, ...block.rows.flat()].flat().flatMap(withInner);
    case 'given':
      return inlinesIn(block.blocks);
    case 'working':
      return block.lines.flatMap(({ left, right }) => [...left, ...right].flatMap(withInner));
    case 'figure':
      return [...inlinesOfFigure(block.figure), ...(block.caption ?? []).flatMap(withInner)];
    case 'answer':
      return inlinesOfSpace(block.space);
    case 'options':
      return block.options.flatMap(({ content }) => content.flatMap(withInner));
    case 'part':
      return inlinesIn(block.blocks);
    case 'question':
      return [...inlinesIn(block.stem), ...block.parts.flatMap((part) => inlinesIn(part.blocks))];
    default:
      return [];
  }
}

/** The alternative text and the labels of a drawing. */
function inlinesOfFigure({ alt, draw }: Figure): Inline[] {
  const labels = draw.flatMap((each) => (each.kind === 'label' ? [each.label, ...(each.below ?? [])] : []));
  return [{ kind: 'text', text: alt }, ...labels.flat().flatMap(withInner)];
}

/** What is printed in an answer space: symbols, labels, table cells. */
export function inlinesOfSpace(space: AnswerSpace): Inline[] {
  switch (space.kind) {
    case 'working':
      return space.symbol.flatMap(withInner);
    case 'short':
      return space.labels.flat().flatMap(withInner);
    case 'table':
      return inlinesOfBlock(space.table);
    case 'grid':
      return space.axes ? [...space.axes.x.label, ...space.axes.y.label].flatMap(withInner) : [];
    default:
      return [];
  }
}

/** Plain words of a run of inlines: formulas and equations stand as one gap each. */
export function plainText(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) =>
      inline.kind === 'text'
        ? inline.text
        : inline.kind === 'quantity'
          ? [inline.number, inline.unit].filter((each) => each !== '').join(' ')
          : '\u25a1',
    )
    .join('');
}
