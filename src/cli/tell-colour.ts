import type { Coloured } from './calculators/colour.ts';
import { lines } from './tell.ts';

const SEEN: Readonly<Record<Coloured['species']['role'], string>> = {
  metal: 'as the metal',
  gas: 'as a gas',
  solution: 'in dilute solution',
  solid: 'as a solid',
  liquid: 'as a liquid',
};

/** `V^3+, vanadium(III) ion: green in dilute solution`, what else is accepted, and where the colour is described. */
export function tellColour({ species, colour: { word, accepted, source } }: Coloured): string {
  return lines(
    `${species.key}, ${species.name}: ${word} ${SEEN[species.role]}`,
    accepted.length === 0 ? undefined : `  also accepted: ${accepted.join('; ')}`,
    `  source: ${source}`,
  );
}
