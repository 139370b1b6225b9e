import type { Mutation } from './mutate.ts';

/** A corruption that neither the auditor nor anyone who has only the two documents could notice, and why. */
interface Survivor {
  readonly kinds: readonly Mutation['kind'][];
  readonly where: RegExp;
  /** what stood there before */
  readonly from?: RegExp;
  readonly families?: readonly string[];
  readonly why: string;
}

const SURVIVORS: readonly Survivor[] = [
  {
    kinds: ['figure', 'mark'],
    where: /^scheme undefined blocks (?:facts|paragraphs)/,
    why: 'seed, version and digests name how the set was made; nothing is computed from them here',
  },
  {
    kinds: ['figure'],
    where: /^scheme undefined blocks items/,
    why: 'hazard codes and sources are data, quoted and not computed',
  },
  {
    kinds: ['figure'],
    where: /^scheme undefined blocks rows text/,
    why: 'names of ideas; their figures (1 : 1, −2) belong to the name',
  },
  { kinds: ['figure'], where: /points (?:not|also) text/, from: /such as \d\+/, why: 'an example of how not to write a charge' },
  {
    kinds: ['figure'],
    where: /^sheet question \d+ stem blocks rows number/,
    families: ['cell-emf', 'stepwise-reduction'],
    why: 'the potential of a half-equation that is printed to be passed over',
  },
  {
    kinds: ['figure'],
    where: /^sheet question \d+ stem blocks rows number/,
    families: ['combine-halves', 'mole-ratio', 'predict-reaction', 'titration-concentration'],
    why: 'a potential that enters by its order alone, and the order is the same',
  },
  {
    kinds: ['figure'],
    where: /^sheet question \d+ stem content number/,
    families: ['titration-concentration'],
    why: 'the volume of acid, printed to be passed over, where no row counts it',
  },
  { kinds: ['figure'], where: /^sheet question \d+ stem content text/, from: /°C/, why: 'how warm it is enters no answer' },
  {
    kinds: ['figure'],
    where: /^sheet question \d+ stem blocks rows text/,
    families: ['combine-halves'],
    why: 'the number that labels a half-equation, which nothing refers to in a choice',
  },
  {
    kinds: ['figure', 'coefficient', 'charge'],
    where: /^sheet question \d+ part {2}blocks options/,
    why: 'a wrong option turned into the answer of another misconception is as fair a wrong option',
  },
  {
    kinds: ['charge'],
    where: /^sheet question \d+ part \w blocks content charge/,
    why: 'a prompt that repeats a species, turned into another species of the same reaction',
  },
  {
    kinds: ['carrying'],
    where: /points carries/,
    why: 'whether later work is credited is a judgement; it is seen only where a row follows a slip through the point',
  },
];

/** @returns why a corruption may be survived; nothing when it must be caught */
export function excuseFor({ kind, where, from }: Mutation, family: string): string | undefined {
  return SURVIVORS.find(
    (each) =>
      each.kinds.includes(kind) &&
      each.where.test(where) &&
      (each.from?.test(from) ?? true) &&
      (each.families?.includes(family) ?? true),
  )?.why;
}
