import type { FormulaNode } from './formula.ts';
import { element } from './formula-parts.ts';

/** Ligand abbreviations that may be typed in round brackets (IUPAC 2005, table VII), as condensed formulas. */
const ABBREVIATIONS: ReadonlyMap<string, readonly FormulaNode[]> = new Map([
  [
    'en',
    [element('N'), element('H', 2), element('C'), element('H', 2), element('C'), element('H', 2), element('N'), element('H', 2)],
  ],
  ['edta', [element('C', 10), element('H', 12), element('N', 2), element('O', 8)]],
  ['ox', [element('C', 2), element('O', 4)]],
]);

/** The formula that an abbreviation stands for: `en` is ethane-1,2-diamine, `edta` the 4− ion, `ox` ethanedioate. */
export function ligandAbbreviation(text: string): readonly FormulaNode[] | undefined {
  return ABBREVIATIONS.get(text);
}
