import { isNamedIn } from '../chemistry/names.ts';
import { shown } from '../engine/chain.ts';
import { difference, marksIn } from '../engine/marks.ts';
import type { ReadPart } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

/** Species of the solvent, which hints may name anywhere. */
const SOLVENT: readonly string[] = ['H2O', 'H^+', 'OH^-', 'e^-'];

/** A species that a question speaks of is one that its equations, its answers or its points hold: no charge and no index went astray. */
export function auditSpecies(audited: Audited): void {
  const { question, asked, right, ledger } = audited;
  const tokens = question.tables.flatMap(({ rows }) => rows.flat(2));
  const equations = everyToken([...tokens, ...question.stem.flat()], 'equation').flatMap(({ equation }) => [
    ...equation.species.keys(),
  ]);
  const marks = [
    ...asked.nodes.flatMap((node) => shown(node, right.get(node.id)!)),
    ...Object.values(asked.points ?? {}).flatMap(({ earns = [] }) => earns),
    ...asked.nodes.flatMap(({ left = [] }) => left),
  ];
  const known = new Set([...SOLVENT, ...(asked.explains ?? []), ...equations, ...marks.flatMap(speciesIn)]);
  const spoken = [
    ...tokens,
    ...question.figures.labels,
    ...question.stem.flat(),
    ...question.parts.flatMap(({ prose, space }) => [...prose.flat(), ...space]),
  ];
  const strange = everyToken(spoken, 'species').filter(({ species }) => !known.has(species.key));
  ledger.noteAll(at(audited, String(question.number)), 'species spoken of', [
    ...strange.map(({ species }) => `${species.key} stands in no equation, answer or point of the question`),
    ...question.parts.flatMap((part, index) => answerLine(audited, part, index)),
    ...strayInPrompt(audited),
    ...strayFigures(audited),
  ]);
}

/** What stands before the answer line is what the working has before its equals sign, `n(Fe²⁺)`, and the prompt speaks of the same. */
function answerLine({ blocks, asked, right }: Audited, { space, prose }: ReadPart, index: number): string[] {
  const node = asked.nodes.find(({ id }) => id === blocks[index]?.roles[0]);
  const prompt = everyToken(prose[0] ?? [], 'species').map(({ species }) => species.key);
  const answer = node && right.get(node.id);
  if (answer?.kind === 'equation') {
    const own = new Set([...answer.sides.left.keys(), ...answer.sides.right.keys()]);
    return prompt.filter((key) => !own.has(key)).map((key) => `the prompt speaks of ${key}, which is not in the answer`);
  }
  if (answer?.kind === 'ratio' && node?.left) {
    const told = [prose[0] ?? [], space].map((tokens) => difference(node.left!, marksIn(tokens)));
    return told.flatMap((wrong, at) =>
      wrong && (at === 0 || space.length > 0) ? [`the ratio that is asked for: ${wrong}`] : [],
    );
  }
  const expected = node?.left?.filter((mark) => mark.startsWith('species ')) ?? [];
  const symbols = space.filter(({ kind }) => kind === 'symbol');
  const wrong = symbols.length > 0 ? difference(expected, marksIn(symbols)) : undefined;
  const missing = prompt.length > 0 ? expected.filter((mark) => !prompt.includes(mark.slice('species '.length))) : [];
  return [...(wrong ? [`the answer line: ${wrong}`] : []), ...missing.map((mark) => `the prompt does not speak of ${mark}`)];
}

/** What a figure shows in numbers stands in the tables too. */
function strayFigures({ question }: Audited): string[] {
  const data = new Set(
    everyToken(
      question.tables.flatMap(({ rows }) => rows.flat(2)),
      'number',
    ).map(({ number }) => number.text),
  );
  const stray = everyToken(question.figures.labels, 'number').filter(({ number }) => !data.has(number.text));
  return stray.map(({ number }) => `the figure shows ${number.text}, which no table has`);
}

/** A choice asks about species that its stem has brought in, or about what is to be weighed. */
function strayInPrompt({ question, asked }: Audited): string[] {
  const weighed = asked.nodes.flatMap(({ left = [] }) =>
    left.filter((mark) => mark.startsWith('species ')).map((mark) => mark.slice('species '.length)),
  );
  const brought = new Set(everyToken(question.stem.flat(), 'species').map(({ species }) => species.key));
  const prompted = question.parts.flatMap(({ options, prose }) =>
    options.length > 0 ? everyToken(prose.flat(), 'species') : [],
  );
  const stray =
    brought.size === 0
      ? []
      : prompted.filter(
          ({ species }) =>
            !brought.has(species.key) && !isNamedIn(species.key, question.stemText) && !weighed.includes(species.key),
        );
  return stray.map(({ species }) => `the prompt asks about ${species.key}, which the stem does not bring in`);
}

/** `species V^2+`, or every species of `equation 1 Zn + …`. */
function speciesIn(mark: string): string[] {
  if (mark.startsWith('species ')) return [mark.slice('species '.length)];
  return mark.startsWith('equation ')
    ? mark
        .slice('equation '.length)
        .split(/ \+ | -> /)
        .map((term) => term.replace(/^\S+ /, ''))
    : [];
}
