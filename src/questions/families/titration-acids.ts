import type { Handled } from '../cautions.ts';

/** Acids by the word that names them, at the concentration, mol dm⁻³, that is taken for a dilute one (common practice, no source). */
const ACIDS: readonly (readonly [word: string, acid: Handled])[] = [
  ['sulfuric', { key: 'H2SO4', form: 'solution', concentration: 1 }],
  ['hydrochloric', { key: 'HCl', form: 'solution', concentration: 1 }],
  ['phosphoric', { key: 'H3PO4', form: 'solution', concentration: 0.5 }],
];

/** What is handled where an acid, or a mixture of acids, is added: `a mixture of dilute sulfuric and phosphoric acids`. */
export const acidsIn = (acid: string): Handled[] => ACIDS.flatMap(([word, each]) => (acid.includes(word) ? [each] : []));
