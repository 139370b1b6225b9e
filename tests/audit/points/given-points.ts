import { shown } from '../engine/chain.ts';
import { difference, marksIn } from '../engine/marks.ts';
import type { Token } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

/** A mark that a completion copy takes away is one whose step it prints: its figure, equation or words stand in a line without gaps. */
export function auditGivenPoints(audited: Audited): void {
  const { blocks, question, asked, printed, support, ledger } = audited;
  if (support !== 'completion') return;
  blocks.forEach(({ points, label }, index) => {
    const lines = (question.parts[index]?.given ?? [])
      .map(({ right }) => right)
      .filter((right) => !right.some(({ kind }) => kind === 'gap'));
    for (const { step, role, given } of points) {
      const node = asked.nodes.find(({ id }) => id === step);
      if (!node || !given.includes(support)) continue;
      const marks = shown(node, printed.get(step)!);
      const isPrinted =
        marks.length === 0
          ? lines.length > 0
          : lines.some((line) => ends(line, marks, asked.vocabulary)) || (lines.length > 0 && isOnTheWay(node.id, audited));
      ledger.noteAll(
        at(audited, label),
        'mark taken away by a completion copy',
        isPrinted ? [] : [`${role} is taken as given and is not printed`],
      );
    }
  });
}

/** A line that ends in the marks, as a sum ends in its result. */
function ends(line: readonly Token[], marks: readonly string[], vocabulary: Parameters<typeof marksIn>[1]): boolean {
  const found = marksIn(line, vocabulary);
  return difference(marks, found.slice(-marks.length)) === undefined;
}

/** A step that shows itself in one that goes on from it: the direction in the equation. */
const isOnTheWay = (id: string, { asked, blocks }: Audited): boolean =>
  !blocks.some(({ roles }) => roles.includes(id)) && asked.nodes.some(({ needs }) => needs.includes(id));
