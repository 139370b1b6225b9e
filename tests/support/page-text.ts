import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { writeFormula } from '../../src/chemistry/write-formula.ts';
import type { AnswerSpace, Block } from '../../src/document/block.ts';
import type { Inline } from '../../src/document/inline.ts';

/** A run of inlines as one line of plain text, chemistry in caret notation. */
export function runText(inlines: readonly Inline[]): string {
  return inlines.map(inlineText).join('').replaceAll(/\s+/g, ' ').trim();
}

function inlineText(inline: Inline): string {
  switch (inline.kind) {
    case 'text':
      return inline.text;
    case 'formula':
      return writeFormula(inline.formula);
    case 'equation':
      return writeEquation(inline.equation, inline.arrow === 'forward' ? '->' : '<=>');
    case 'quantity':
      return [inline.number, inline.unit].filter((each) => each !== '').join(' ');
    case 'symbol':
      return `${inline.letter}${inline.raised ?? ''}${inline.lowered ?? ''}${inline.of ? `(${runText(inline.of)})` : ''}`;
    case 'fraction':
      return `(${runText(inline.above)})/(${runText(inline.below)})`;
    case 'gap':
      return ' ____ ';
  }
}

/** Blocks as lines of plain text, for goldens: what is said and in which order, not how it looks. */
export function pageLines(blocks: readonly Block[]): string[] {
  return blocks.flatMap(linesOf);
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case 'paragraph':
      return [`${block.weight ? `(${block.weight}) ` : ''}${runText(block.content)}`];
    case 'heading':
      return ['', `${'#'.repeat(block.level)} ${runText(block.content)}`];
    case 'display':
      return [`  ${runText(block.content)}`];
    case 'table':
      return [block.header, ...block.rows].map((row) => `| ${row.map(runText).join(' | ')} |`);
    case 'given':
      return [`[${block.caption}]`, ...pageLines(block.blocks)];
    case 'working':
      return block.lines.map(
        ({ left, right }) =>
          `  ${[left, right]
            .filter((side) => side.length > 0)
            .map(runText)
            .join(' = ')}`,
      );
    case 'list':
      return block.items.flatMap((item) => pageLines(item).map((line) => `- ${line}`));
    case 'options':
      return block.options.map(({ letter, content }) => `${letter}  ${runText(content)}`);
    case 'answer':
      return [`<${spaceText(block.space)}>`];
    case 'question':
      return ['', `${block.number}. (${block.marks} marks)`, ...pageLines(block.stem), ...block.parts.flatMap(linesOf)];
    case 'part':
      return [`${block.letter ?? '-'}  [${block.marks}]`, ...pageLines(block.blocks)];
    case 'scheme':
      return [
        '',
        `${block.label} [${block.marks}] ${block.answer.map(runText).join(' // ')}`,
        ...block.points.map(
          ({ earns, carries, given }) =>
            `  * ${runText(earns)}${carries ? ' (carries)' : ''}${given ? ` (given: ${given.join(', ')})` : ''}`,
        ),
        ...pageLines(block.worked),
        ...block.seen.map(({ wrote, happened, earns }) => `  ? ${runText(wrote)} :: ${runText(happened)} :: ${runText(earns)}`),
      ];
    case 'head':
      return [`${block.title} :: ${block.facts.join(' · ')}`];
    case 'figure':
      return [`{${block.figure.alt}}`];
    default:
      return [`(${block.kind})`];
  }
}

function spaceText(space: AnswerSpace): string {
  if (space.kind === 'lines') return `${space.count} lines`;
  if (space.kind === 'working') return `working: ${runText(space.symbol)} = ____ ${space.unit}`;
  return space.kind;
}
