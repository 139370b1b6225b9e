import { shown, worked } from '../engine/chain.ts';
import { difference, marksIn } from '../engine/marks.ts';
import type { ReadRow, ReadScheme } from '../reading/scheme.ts';
import type { ReadPart } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

/** Options: one right and only one, each wrong one an answer of a named misconception, all distinct, figures ascending in one unit. */
export function auditOptions(audited: Audited): void {
  audited.question.parts.forEach((part, index) => {
    const block = audited.blocks[index];
    if (part.options.length > 0 && block) auditPart(audited, part, block);
  });
}

function auditPart(audited: Audited, part: ReadPart, block: ReadScheme): void {
  const { asked, right, ledger } = audited;
  const place = at(audited, block.label);
  const node = asked.nodes.find(({ id }) => id === block.roles[0]);
  if (!node) {
    ledger.note(place, 'option', { unreached: `no own answer at \`${block.roles[0]}\`` });
    return;
  }
  const own = shown(node, right.get(node.id)!);
  const wrong = asked.slips.map((slip) => shown(node, worked(asked.nodes, slip).get(node.id)!));
  const [first] = block.answers[0] ?? [];
  const key = first?.kind === 'words' ? /^([A-H])\s/.exec(first.text)?.[1] : undefined;
  for (const { letter, content } of part.options) {
    const found = marksIn(content, asked.vocabulary);
    const told = `option ${letter} (${found.join(' ')})`;
    const isRight = difference(own, found) === undefined;
    const isKnown = wrong.some((marks) => difference(marks, found) === undefined);
    ledger.noteAll(place, 'option', [
      ...(isRight === (letter === key) ? [] : [`${told} is ${isRight ? 'right' : 'wrong'}, the scheme says ${key}`]),
      ...(isRight || isKnown ? [] : [`${told} is the answer of no misconception known`]),
    ]);
  }
  ledger.noteAll(place, 'set of options', [
    ...setProblems(part, asked.vocabulary),
    ...tellingProblems(part, block, key, audited),
  ]);
}

/** What the scheme tells a marker to look out for is what can be chosen: each wrong option under its letter, and nothing else. */
function tellingProblems({ options }: ReadPart, { rows }: ReadScheme, key: string | undefined, { asked }: Audited): string[] {
  const letterOf = ({ wroteText }: ReadRow): string => /^([A-H])\s/.exec(wroteText)?.[1] ?? 'none';
  const untold = options.filter(({ letter }) => letter !== key && !rows.some((row) => letterOf(row) === letter));
  return [
    ...untold.map(({ letter }) => `option ${letter} is wrong, and the scheme does not say why`),
    ...rows.flatMap((row) => {
      const chosen = options.find(({ letter }) => letter === letterOf(row));
      if (!chosen || chosen.letter === key) return [`"${row.wroteText}" is no wrong option`];
      const unlike = difference(marksIn(chosen.content, asked.vocabulary), marksIn(row.wrote, asked.vocabulary));
      return unlike === undefined ? [] : [`"${row.wroteText}" is not what option ${chosen.letter} says: ${unlike}`];
    }),
  ];
}

function setProblems({ options }: ReadPart, vocabulary: Parameters<typeof marksIn>[1]): string[] {
  const contents = options.map(({ content }) => marksIn(content, vocabulary).join('; '));
  const numbers = options.flatMap(({ content }) => everyToken(content, 'number'));
  const isNumeric = options.every(({ content }) => content.length === 1 && content[0]?.kind === 'number');
  const ascending = numbers.every(({ number }, at) => at === 0 || numbers[at - 1]!.number.value.compare(number.value) < 0);
  return [
    ...(new Set(contents).size === contents.length ? [] : ['two options print alike']),
    ...(options.length >= 3 ? [] : [`${options.length} options are too few`]),
    ...(options.map(({ letter }) => letter).join('') === 'ABCDEFGH'.slice(0, options.length) ? [] : ['letters out of order']),
    ...(isNumeric && !ascending ? ['figures do not ascend'] : []),
    ...(isNumeric && new Set(numbers.map(({ unit }) => unit)).size > 1 ? ['units differ'] : []),
  ];
}
