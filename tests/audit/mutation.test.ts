import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { inProject } from '../support/data.ts';
import { auditPaper } from './audit.ts';
import { kitchenIn } from './make/kitchen.ts';
import { type PaperAsk, paperDocuments } from './make/papers.ts';
import { type Mutation, mutationsOf } from './mutate.ts';
import { excuseFor } from './survivors.ts';

const kitchen = kitchenIn(inProject('.'));
const SEEDS = process.env.COUPLET_FULL ? 20 : 2;

const ways = FAMILIES.flatMap(({ id, answering }) =>
  answering.flatMap((each) =>
    (['core', 'stretch'] as const).map((level) => ({ family: id, answering: each, level, name: `${id}, ${each}, ${level}` })),
  ),
);

function papersOf({ family, answering, level }: (typeof ways)[number]) {
  return Array.from({ length: SEEDS }, (_, seed) => {
    const ask: PaperAsk = { seed: `mutation ${seed}`, level, support: 'open', units: 'dm', questions: [{ family, answering }] };
    return paperDocuments(ask, kitchen);
  });
}

/** Corruptions of a finished paper, and whether the auditor finds each. Only one stands at a time. */
function tried(way: (typeof ways)[number]): { readonly mutation: Mutation; readonly isCaught: boolean }[] {
  return papersOf(way).flatMap((documents) =>
    mutationsOf(documents).map((mutation) => {
      mutation.apply();
      const isCaught = auditPaper(documents).findings.length > 0;
      mutation.undo();
      return { mutation, isCaught };
    }),
  );
}

describe.each(ways)('$name', (way) => {
  const all = tried(way);

  it('is sound before it is corrupted, and after every corruption is taken back', () => {
    for (const documents of papersOf(way)) {
      const before = JSON.stringify(documents);
      for (const mutation of mutationsOf(documents)) {
        mutation.apply();
        mutation.undo();
      }
      expect(JSON.stringify(documents)).toBe(before);
      expect(auditPaper(documents).findings).toEqual([]);
    }
  });

  it('is caught with one coefficient, figure, mark, colour word, charge or letter changed', () => {
    const survivors = all.filter(({ mutation, isCaught }) => !isCaught && excuseFor(mutation, way.family) === undefined);
    expect(survivors.map(({ mutation: { kind, where, from, to } }) => `${kind} at ${where}: ${from} → ${to}`)).toEqual([]);
  });

  it('is caught far more often than it is excused', () => {
    const chemistry = all.filter(({ mutation }) => !/^scheme undefined/.test(mutation.where) && mutation.kind !== 'carrying');
    expect(chemistry.filter(({ isCaught }) => isCaught).length / chemistry.length).toBeGreaterThan(0.85);
  });
});

describe('a corruption', () => {
  it('of each kind is tried in some family', () => {
    const kinds = new Set(ways.flatMap((way) => papersOf(way).flatMap(mutationsOf)).map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['carrying', 'charge', 'coefficient', 'colour', 'figure', 'letter', 'mark']);
  });
});
