import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { TABLES } from '../potentials/default-tables.ts';

/** Colours as printed in open sources, each named in the file. */
const CASES = JSON.parse(readFileSync(new URL('data/colours.json', import.meta.url), 'utf8')) as readonly {
  readonly id: string;
  readonly species: string;
  readonly colour: string;
  readonly source: string;
}[];

describe('colours against published descriptions', () => {
  it.each(CASES.map((each) => [each.species, each.colour, each.source] as const))(
    'accepts for %s the colour %s (%s)',
    (species, colour) => {
      const { word, accepted } = TABLES.speciesOf(species).colour!;
      const words = [word, ...accepted];
      expect(
        words.some((known) => known === colour || known.startsWith(`${colour} `)),
        `${words.join(', ')}`,
      ).toBe(true);
    },
  );

  it('names a published source for the colours of the ladders', () => {
    for (const key of ['VO2^+', 'VO^2+', 'V^3+', 'V^2+', 'Cr2O7^2-', 'MnO4^-', 'MnO4^2-', 'Fe^2+', 'Cu^2+', 'Cr^3+', 'CrO4^2-']) {
      expect(TABLES.speciesOf(key).colour!.source, key).not.toMatch(/no source|memory/);
    }
  });
});
