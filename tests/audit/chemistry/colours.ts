/**
 * Colours in dilute solution, as solid or gas, as usually accepted: common practice, no source. Every word that a sheet may print for a
 * species; the auditor's own list, kept apart from the data of the program.
 */
const COLOURS: Readonly<Record<string, readonly string[]>> = {
  'VO2^+': ['yellow'],
  'VO^2+': ['blue'],
  'V^3+': ['green'],
  'V^2+': ['violet', 'purple'],
  V: ['grey', 'silvery'],
  'Cr2O7^2-': ['orange'],
  'CrO4^2-': ['yellow'],
  'Cr^3+': ['green', 'violet'],
  'Cr^2+': ['blue'],
  Cr: ['grey', 'silvery'],
  'MnO4^-': ['purple', 'pink-purple', 'pale pink', 'pink'],
  'MnO4^2-': ['dark green', 'green'],
  MnO2: ['brown', 'brown-black', 'black'],
  'Mn^2+': ['colourless', 'very pale pink', 'almost colourless', 'pale pink'],
  'Mn^3+': ['red'],
  Mn: ['grey', 'silvery'],
  'Fe^2+': ['pale green', 'green'],
  'Fe^3+': ['yellow', 'yellow-brown', 'brown', 'orange', 'pale violet'],
  Fe: ['grey', 'silvery'],
  'Co^2+': ['pink'],
  'Co^3+': ['blue'],
  'Ni^2+': ['green'],
  'Cu^2+': ['blue'],
  'Cu^+': ['colourless'],
  CuI: ['white', 'off-white'],
  Cu: ['red-brown', 'brown', 'pink-brown'],
  'Ti^3+': ['violet', 'purple'],
  'TiO^2+': ['colourless'],
  Ti: ['grey', 'silvery'],
  I2: ['brown', 'yellow-brown', 'red-brown'],
  Br2: ['orange', 'yellow-orange'],
  Cl2: ['pale green', 'yellow-green'],
  'Ce^4+': ['yellow', 'orange'],
  'Ce^3+': ['colourless'],
  S: ['yellow'],
  PbO2: ['brown', 'dark brown'],
};

/** Dissolved species that have no colour. */
const COLOURLESS = new Set(
  (
    'Ag^+ Zn^2+ Sn^2+ Sn^4+ S2O3^2- S4O6^2- SO4^2- S2O8^2- H2O2 C2O4^2- H2C2O4 I^- Br^- Cl^- SO2 H^+ H2O OH^- Mg^2+ Al^3+ Pb^2+ Cd^2+ Na^+ K^+ ' +
    'CO2 O2 H2 H2S SO3^2- NH4^+ NO3^- Ca^2+ Ba^2+ ClO^- HOCl ClO3^- BrO3^- IO3^- NO'
  ).split(' '),
);

/** @returns words that fit the species; undefined when the auditor knows none */
export function coloursOf(key: string): readonly string[] | undefined {
  return COLOURLESS.has(key) ? ['colourless'] : COLOURS[key];
}

const BASE =
  'colourless|purple|violet|pink|lilac|mauve|red|orange|yellow|green|blue|brown|black|white|grey|gray|silvery|silver-grey|straw|cream|gold|off-white|amber';
/** A colour in words: shades before it and joined words belong to it. */
export const COLOUR_WORDS = new RegExp(
  `(?:(?:very |almost |nearly )?(?:pale|dark|deep|light|bright|faint|almost|nearly) )?\\b(?:${BASE})(?:-(?:${BASE}))*\\b`,
  'gi',
);

/** What is seen at the end point, by titrant and by what stands in the flask. Common practice, no source. */
export interface EndPoint {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

export function endPointOf(titrant: string, analyte: string, indicator: string): EndPoint | undefined {
  // Iron(III) ions that are formed make the mixture pale yellow, and the first pink on it orange.
  if (titrant === 'MnO4^-' && analyte === 'Fe^2+')
    return {
      before: ['colourless', 'very pale green', 'pale green', 'pale yellow'],
      after: ['pale pink', 'pink', 'faint pink', 'orange-pink'],
    };
  if (titrant === 'MnO4^-')
    return { before: ['colourless', 'very pale green', 'pale green'], after: ['pale pink', 'pink', 'faint pink'] };
  if (/starch/i.test(indicator)) {
    const [gone, there] = [['colourless'], ['blue-black', 'blue', 'black', 'dark blue']];
    if (analyte === 'I2') return { before: there, after: gone };
    return titrant === 'I2' ? { before: gone, after: there } : undefined;
  }
  if (/diphenylamine/.test(indicator)) return { before: ['green', 'pale green'], after: ['violet', 'purple', 'violet-blue'] };
  return /ferroin/.test(indicator) ? { before: ['red', 'orange-red'], after: ['pale blue', 'blue'] } : undefined;
}

/** Words for colours that two people may use for the same thing. Common practice, no source. */
const FAMILIES: readonly (readonly string[])[] = [
  ['violet', 'purple', 'lilac', 'mauve', 'pink-purple', 'violet-blue', 'lavender'],
  ['purple', 'pink-purple', 'pink', 'pale purple', 'deep purple', 'magenta', 'red-purple'],
  ['blue', 'bright blue', 'light blue', 'pale blue', 'sky blue', 'deep blue'],
  ['blue-black', 'blue', 'black', 'dark blue', 'deep blue'],
  ['pink', 'pale pink', 'very pale pink', 'colourless', 'almost colourless', 'nearly colourless'],
  [
    'green',
    'pale green',
    'very pale green',
    'dark green',
    'grey-green',
    'light green',
    'emerald green',
    'green-blue',
    'blue-green',
  ],
  [
    'yellow',
    'yellow-brown',
    'orange-brown',
    'brown',
    'orange',
    'orange-yellow',
    'pale yellow',
    'straw',
    'red-brown',
    'yellow-orange',
  ],
  ['colourless', 'very pale green', 'pale green'],
  ['red', 'orange-red', 'red-orange'],
  ['pale blue', 'very pale blue', 'colourless', 'almost colourless', 'blue'],
  ['grey', 'silvery', 'silver-grey'],
];

export function sameFamily(one: string, other: string): boolean {
  return one === other || FAMILIES.some((family) => family.includes(one) && family.includes(other));
}
