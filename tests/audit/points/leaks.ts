import { COLOUR_WORDS } from '../chemistry/colours.ts';
import { canonical } from '../chemistry/sides.ts';
import { shown } from '../engine/chain.ts';
import { marksIn } from '../engine/marks.ts';
import { everyToken, type Token } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

/**
 * No answer can be read before it is written: not a figure of three digits, not an equation, not a colour. What a support prints for the
 * pupil is no answer any more, and may give no other away.
 */
export function auditLeaks(audited: Audited): void {
  const { question, blocks, asked, right, ledger, support } = audited;
  const given = question.parts.flatMap(({ given: lines }) => lines.flatMap((line) => [...line.left, ...line.right]));
  const prose = [
    { kind: 'words', text: question.figures.alt } as const,
    ...question.figures.labels,
    ...question.stem.flat(),
    ...question.parts.flatMap(({ prose: own, space }) => [...own.flat(), ...space]),
    ...given,
  ];
  const tables = question.tables.flatMap(({ rows }) => rows.flat(2));
  const written = writtenIn(prose, tables);
  for (const { roles, points, label } of blocks) {
    const problems = roles.flatMap((role) => {
      const node = asked.nodes.find(({ id }) => id === role);
      // An answer without a mark of its own (an equation marked for atoms and for charge) is given where all the marks of its part are.
      const own = points.filter((point) => point.step === role);
      const isPrinted = (own.length > 0 ? own : points).every(({ given }) => given.includes(support)) && points.length > 0;
      if (!node || isPrinted) return [];
      return shown(node, right.get(role)!).flatMap((mark) =>
        written.has(mark) ? [`the answer ${mark} can be read on the sheet`] : [],
      );
    });
    ledger.noteAll(at(audited, label), 'answers kept off the sheet', problems);
  }
}

function writtenIn(prose: readonly Token[], tables: readonly Token[]) {
  const equations = new Set(everyToken([...prose, ...tables], 'equation').map(({ equation }) => canonical(equation)));
  const digits = new Set(marksIn(prose, { numbers: true }).flatMap((mark) => (mark.startsWith('number ') ? [bare(mark)] : [])));
  const data = new Set(everyToken(tables, 'number').map(({ number }) => bare(`number ${number.text}`)));
  const text = prose.map((token) => (token.kind === 'words' ? token.text : '\n')).join('');
  const colours = new Set([...text.matchAll(COLOUR_WORDS)].map(([word]) => word.toLowerCase()));
  return {
    has: (mark: string) => {
      if (mark.startsWith('equation ')) return equations.has(mark.slice('equation '.length));
      if (mark.startsWith('colour '))
        return mark
          .slice('colour '.length)
          .split('|')
          .some((word) => colours.has(word));
      return (
        mark.startsWith('number ') &&
        bare(mark).replaceAll(/\D/g, '').length >= 3 &&
        digits.has(bare(mark)) &&
        !data.has(bare(mark))
      );
    },
  };
}

/** The figure of a mark without sign and unit. */
const bare = (mark: string): string => /^number [+\u2212]?(\S+(?: × 10\^-?\d+)?)/.exec(mark)?.[1] ?? '';
