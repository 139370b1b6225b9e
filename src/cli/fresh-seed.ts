import { randomBytes } from 'node:crypto';
import { drawsFrom } from '../random/draws.ts';
import { pronounceable } from '../random/pronounceable.ts';

/** A seed nobody has asked for: a short word that can be said aloud. The only draw in the program that cannot be repeated. */
export function freshSeed(): string {
  return pronounceable(drawsFrom(randomBytes(16).toString('hex')));
}
