import { complexParts } from '../../chemistry/complex-parts.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { knownIon } from '../../chemistry/ions.ts';
import type { Ligand } from '../../chemistry/ligands.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import type { Block } from '../../document/block.ts';
import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';

/** Ligands whose charge a class knows (common practice, no source). */
const USUAL: readonly string[] = ['H2O', 'NH3', 'CO', 'F', 'Cl', 'Br', 'I', 'CN', 'OH'];

/** Names by which a class knows ligands that are no ions of the usual list. */
const TRADE_NAMES: Readonly<Record<string, string>> = { C10H12N2O8: 'edta' };

/** A sentence for each less usual ligand of a complex: its name and its charge, without which the number cannot be worked out. */
export function ligandNotes(formula: Formula, words: Words): Block[] {
  const bracket = formula.units[0]?.nodes.find((node) => node.kind === 'group' && node.bracket === '[');
  const parts = bracket?.kind === 'group' ? complexParts(bracket.nodes) : undefined;
  const strange = (parts?.ligands ?? []).filter(({ ligand }) => !USUAL.includes(ligand.text));
  return strange.flatMap(({ ligand }) => noteOf(formula, ligand, words));
}

function noteOf(formula: Formula, { text, charge, tradeName }: Ligand, words: Words): Block[] {
  const complex = species(formula);
  if (charge === 0) return words.blocks('ligand-neutral', { formula: complex, ligand: species(parseFormula(text)) });
  const name = knownIon(text)?.name ?? TRADE_NAMES[text] ?? tradeName;
  const size = Math.abs(charge) === 1 ? '' : String(Math.abs(charge));
  const ion = species(parseFormula(`${text}^${size}${charge < 0 ? '-' : '+'}`));
  return words.blocks('ligand', { formula: complex, name, ion });
}
