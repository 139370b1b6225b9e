import { keyOf } from '../../chemistry/write-formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import { cautionsFor, type Handled } from '../cautions.ts';
import type { Caution } from '../question.ts';
import type { Ladder } from './stepwise-ladder.ts';

/** Concentration, mol dm⁻³, that solutions of such a demonstration are taken to have (common practice, no source). */
const BENCH = 0.1;

/** @returns undefined when something handled has no hazards row, or may not be described in a procedure with what it meets */
export function ladderCautions(ladder: Ladder, tables: Tables): Caution[] | undefined {
  const key = keyOf(ladder.reacts);
  const { role } = tables.speciesOf(key);
  const reagent: Handled =
    role === 'gas'
      ? { key, form: 'gas' }
      : role === 'metal'
        ? { key, form: 'powder' }
        : { key, form: 'solution', concentration: BENCH };
  const handled: Handled[] = [
    { key: keyOf(ladder.start), form: 'solution', concentration: BENCH },
    reagent,
    { key: 'H2SO4', form: 'solution', concentration: 1 },
  ];
  return (
    cautionsFor(handled, tables) ??
    (role === 'metal' ? cautionsFor([handled[0]!, { key, form: 'solid' }, handled[2]!], tables) : undefined)
  );
}
