import type { CaseReader } from '../engine/case.ts';
import { figuresIn } from './potentials.ts';
import { pairCase } from './predict-pair.ts';
import { shelfCase } from './predict-shelf.ts';

/** Will they react: two species, or one against three reagents. */
export const predictReaction: CaseReader = ({ question }) => {
  const isShelf = question.tables.some(({ rows }) => rows.length > 2);
  return {
    ...(isShelf ? shelfCase(question) : pairCase(question)),
    vocabulary: {
      words: {
        'not oxidise': /does not oxidise|cannot oxidise/,
        oxidise: /\boxidises\b|\bcan oxidise\b/,
        reduce: /\breduces\b/,
        infeasible: /not feasible/,
        feasible: /\bfeasible\b/,
        positive: /is positive/,
        negative: /is negative|, negative/,
        more: /more positive/,
        less: /less positive/,
        'oxidising agents': /oxidising agents/,
        'reducing agents': /reducing agents/,
        'an oxidising agent': /it is an oxidising agent/,
        'a reducing agent': /it is a reducing agent/,
        opposed: /one of the two is called/,
        'neither gives': /neither (?:gives|can give)/,
        'neither takes': /neither (?:takes|can take)/,
        'only take': /can only take/,
        'only give': /can only give/,
        'so they react': /so they react/,
        missed: /taken to react/,
        yes: /\byes[,:]/,
        no: /\bno[,:]/,
      },
    },
    printed: figuresIn(question),
  };
};
