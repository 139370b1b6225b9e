/** A polyatomic ion that salts are made of. */
export interface KnownIon {
  /** as written inside a formula, without charge: `SO4` */
  readonly text: string;
  readonly charge: number;
  /** IUPAC 2005 name as used in this subject, with oxidation number where that is usual: `manganate(VII)` */
  readonly name: string;
  /** other names that are met: `permanganate` */
  readonly tradeName?: string;
}

/**
 * Ions by the text they have inside a salt. Names: IUPAC, Nomenclature of Inorganic Chemistry, Recommendations 2005, table IX
 * (accepted names), with oxidation numbers as is usual in post-16 courses (common practice, no source).
 * Text, charge, name, other name.
 */
const ROWS: readonly (readonly [text: string, charge: number, name: string, tradeName?: string])[] = [
  ['NH4', 1, 'ammonium'],
  ['VO2', 1, 'dioxidovanadium(V)', 'dioxovanadium(V)'],
  ['VO', 2, 'oxidovanadium(IV)', 'oxovanadium(IV)'],
  ['TiO', 2, 'oxidotitanium(IV)', 'oxotitanium(IV)'],
  ['OH', -1, 'hydroxide'],
  ['CN', -1, 'cyanide'],
  ['SCN', -1, 'thiocyanate'],
  ['NCS', -1, 'thiocyanate'],
  ['NO3', -1, 'nitrate'],
  ['NO2', -1, 'nitrite', 'nitrate(III)'],
  ['ClO4', -1, 'chlorate(VII)', 'perchlorate'],
  ['ClO3', -1, 'chlorate(V)', 'chlorate'],
  ['ClO2', -1, 'chlorate(III)', 'chlorite'],
  ['ClO', -1, 'chlorate(I)', 'hypochlorite'],
  ['BrO3', -1, 'bromate(V)', 'bromate'],
  ['BrO', -1, 'bromate(I)', 'hypobromite'],
  ['IO4', -1, 'iodate(VII)', 'periodate'],
  ['IO3', -1, 'iodate(V)', 'iodate'],
  ['MnO4', -1, 'manganate(VII)', 'permanganate'],
  ['HCO3', -1, 'hydrogencarbonate', 'bicarbonate'],
  ['CO3', -2, 'carbonate'],
  ['HSO4', -1, 'hydrogensulfate', 'bisulfate'],
  ['SO4', -2, 'sulfate'],
  ['HSO3', -1, 'hydrogensulfite', 'hydrogensulfate(IV)'],
  ['SO3', -2, 'sulfite', 'sulfate(IV)'],
  ['S2O3', -2, 'thiosulfate'],
  ['S4O6', -2, 'tetrathionate'],
  ['S2O8', -2, 'peroxodisulfate', 'persulfate'],
  ['HSO5', -1, 'hydrogenperoxosulfate'],
  ['S2O7', -2, 'disulfate'],
  ['S2O5', -2, 'disulfite', 'metabisulfite'],
  ['CrO4', -2, 'chromate(VI)', 'chromate'],
  ['Cr2O7', -2, 'dichromate(VI)', 'dichromate'],
  ['C2O4', -2, 'ethanedioate', 'oxalate'],
  ['HC2O4', -1, 'hydrogenethanedioate', 'hydrogenoxalate'],
  ['CH3COO', -1, 'ethanoate', 'acetate'],
  ['CH3CO2', -1, 'ethanoate', 'acetate'],
  ['C2H3O2', -1, 'ethanoate', 'acetate'],
  ['HCOO', -1, 'methanoate', 'formate'],
  ['PO4', -3, 'phosphate'],
  ['HPO4', -2, 'hydrogenphosphate'],
  ['H2PO4', -1, 'dihydrogenphosphate'],
  ['SiO3', -2, 'silicate'],
  ['VO3', -1, 'vanadate(V)', 'metavanadate'],
  ['BO3', -3, 'borate'],
  ['N3', -1, 'azide'],
];

const BY_TEXT: ReadonlyMap<string, KnownIon> = new Map(
  ROWS.map(([text, charge, name, tradeName]) => [text, tradeName ? { text, charge, name, tradeName } : { text, charge, name }]),
);

/** The ion that is written so inside a salt, if it is known. */
export function knownIon(text: string): KnownIon | undefined {
  return BY_TEXT.get(text);
}

/** All known ions. */
export function allIons(): readonly KnownIon[] {
  return [...BY_TEXT.values()];
}
