import { shown } from '../engine/chain.ts';
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
  const known = new Set([...SOLVENT, ...equations, ...marks.flatMap(speciesIn)]);
  const spoken = [...question.stem.flat(), ...question.parts.flatMap(({ prose, space }) => [...prose.flat(), ...space])];
  const strange = everyToken(spoken, 'species').filter(({ species }) => !known.has(species.key));
  ledger.noteAll(
    at(audited, String(question.number)),
    'species spoken of',
    strange.map(({ species }) => `${species.key} stands in no equation, answer or point of the question`),
  );
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
