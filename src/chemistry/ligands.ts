/** A ligand as it stands in a complex. */
export interface Ligand {
  /** canonical text inside a formula: `NH3` */
  readonly text: string;
  readonly charge: number;
  /** bonds that one ligand makes to the metal */
  readonly denticity: number;
  /** IUPAC 2005 name: `ammine`, `chlorido` */
  readonly name: string;
  /** name still met in courses: `chloro` */
  readonly tradeName: string;
  /** true when its count is given by bis, tris … and its name stands in brackets */
  readonly bracketed: boolean;
}

/**
 * Ligands: texts it may be written with (the first is canonical), charge, denticity, IUPAC 2005 name, older name when it differs.
 * Source of names: IUPAC, Nomenclature of Inorganic Chemistry, Recommendations 2005, IR-9.2.2.3 and tables VII and IX.
 */
const ROWS: readonly (readonly [texts: string, charge: number, denticity: number, name: string, tradeName?: string])[] = [
  ['H2O OH2', 0, 1, 'aqua'],
  ['NH3', 0, 1, 'ammine'],
  ['CO', 0, 1, 'carbonyl'],
  ['CH3NH2', 0, 1, '(methanamine)', '(methylamine)'],
  ['C5H5N', 0, 1, '(pyridine)'],
  ['NH2CH2CH2NH2 H2NCH2CH2NH2 C2H8N2 C2H4(NH2)2', 0, 2, '(ethane-1,2-diamine)', '(ethylenediamine)'],
  ['C10H8N2', 0, 2, "(2,2'-bipyridine)"],
  ['C12H8N2', 0, 2, '(1,10-phenanthroline)'],
  ['F', -1, 1, 'fluorido', 'fluoro'],
  ['Cl', -1, 1, 'chlorido', 'chloro'],
  ['Br', -1, 1, 'bromido', 'bromo'],
  ['I', -1, 1, 'iodido', 'iodo'],
  ['CN', -1, 1, 'cyanido', 'cyano'],
  ['OH HO', -1, 1, 'hydroxido', 'hydroxo'],
  ['H', -1, 1, 'hydrido'],
  ['SCN', -1, 1, 'thiocyanato'],
  ['NCS', -1, 1, 'isothiocyanato'],
  ['NO2', -1, 1, 'nitrito-κN', 'nitro'],
  ['ONO', -1, 1, 'nitrito-κO', 'nitrito'],
  ['NO3', -1, 1, 'nitrato'],
  ['NH2', -1, 1, 'amido'],
  ['N3', -1, 1, 'azido'],
  ['CH3COO', -1, 1, 'ethanoato', 'acetato'],
  ['O', -2, 1, 'oxido', 'oxo'],
  ['S2O3', -2, 1, 'thiosulfato'],
  ['SO4', -2, 1, 'sulfato'],
  ['CO3', -2, 2, 'carbonato'],
  ['C2O4', -2, 2, 'ethanedioato', 'oxalato'],
  ['C10H12N2O8', -4, 6, '(ethane-1,2-diyldinitrilo)tetraacetato', 'ethylenediaminetetraacetato'],
];

const BY_TEXT: ReadonlyMap<string, Ligand> = new Map(
  ROWS.flatMap(([texts, charge, denticity, name, tradeName = name]) => {
    const all = texts.split(' ');
    const bracketed = name.startsWith('(') || denticity > 1 || /^(thio|sulfato|nitrato)/.test(name);
    const bare = (text: string) => (text.startsWith('(') && text.endsWith(')') ? text.slice(1, -1) : text);
    const ligand: Ligand = { text: all[0]!, charge, denticity, name: bare(name), tradeName: bare(tradeName), bracketed };
    return all.map((text) => [text, ligand] as const);
  }),
);

/** The ligand that is written so inside a complex, if it is known. */
export function knownLigand(text: string): Ligand | undefined {
  return BY_TEXT.get(text);
}

/** All known ligands. */
export function allLigands(): readonly Ligand[] {
  return [...new Set(BY_TEXT.values())];
}
