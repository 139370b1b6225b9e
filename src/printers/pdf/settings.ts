/** Sizes of print. `clear` follows clear-print advice (nothing under 12 pt), `large` has 18 pt text and no glyph under 16 pt. */
export type Print = 'standard' | 'clear' | 'large' | '24' | '36';

/** What the user chooses about the page; everything else follows from it. */
export interface Settings {
  readonly paper: 'a4' | 'letter';
  readonly print: Print;
  /** `both`: the punched margin changes sides on even pages */
  readonly sides: 'one' | 'both';
  /** background of the page, for readers whom white paper dazzles; none when absent */
  readonly tint?: Tint;
  /** question sheets have fields to type into, for work that is handed in as a file */
  readonly fillable?: boolean;
}

/** Tints of the page: all text keeps a contrast above 7 to 1 on them, and none is seen on a grey print. */
export type Tint = 'none' | 'cream' | 'blue';

/** Red, green and blue, 0 to 1. */
export const TINTS: Readonly<Record<Exclude<Tint, 'none'>, readonly [number, number, number]>> = {
  cream: [1, 0.97, 0.88],
  blue: [0.9, 0.95, 1],
};

export const DEFAULT_SETTINGS: Settings = { paper: 'a4', print: 'standard', sides: 'both' };

/** Every length of the page, in points, worked out from the settings. */
export interface Measures {
  readonly width: number;
  readonly height: number;
  /** punched side, open side, top, bottom */
  readonly margin: { readonly punched: number; readonly open: number; readonly top: number; readonly bottom: number };
  readonly sides: 'one' | 'both';
  /** width between the side margins */
  readonly frame: number;
  readonly size: {
    readonly text: number;
    readonly small: number;
    readonly tiny: number;
    readonly title: number;
    readonly heading: number;
    readonly number: number;
  };
  /** no glyph is smaller than this */
  readonly floor: number;
  /** baseline to baseline in running text, as a multiple of the size */
  readonly leading: number;
  /** column of question numbers and part letters */
  readonly hang: number;
  /** column of marking cells on a question sheet, the gap before it included; 0 when cells stand below their parts */
  readonly cells: number;
  /** one vertical step: half a line of text */
  readonly step: number;
  readonly hairline: number;
  /** distance of ruled lines to write on */
  readonly ruled: number;
  /** how much taller than in ordinary print boxes for working are */
  readonly roomy: number;
}

/** Text above this size is large print, with a foot of several lines and simpler arrangements. */
export const LARGE = 12;

/** Text above this size has pages that hold a few lines: nothing is printed on them that can be left out. */
export const FEW_LINES = 20;

/** Text above this size leaves no room for a column of marking cells; they stand below their parts. */
const HUGE = 28;

/** Line to line in the foot. */
export const FOOT_LEADING = 1.25;

/** Points in a millimetre. */
export const MM = 72 / 25.4;

/** Nothing stands nearer to the edge of the paper: most machines cannot print there. */
export const SAFE = 10 * MM;

const PAPERS = { a4: [210 * MM, 297 * MM], letter: [612, 792] } as const;

const PRINTS: Readonly<Record<Print, { text: number; floor: number; leading: number }>> = {
  standard: { text: 10.8, floor: 6, leading: 1.38 },
  clear: { text: 14, floor: 12, leading: 1.4 },
  large: { text: 18, floor: 16, leading: 1.4 },
  '24': { text: 24, floor: 20, leading: 1.35 },
  '36': { text: 36, floor: 30, leading: 1.3 },
};

/** Works out the measures of a page. Sizes derive from the text size, so that pages re-flow for large print. */
export function measure(settings: Settings): Measures {
  const [width, height] = PAPERS[settings.paper];
  const { text, floor, leading } = PRINTS[settings.print];
  const at = (ratio: number): number => Math.max(floor, round(text * ratio));
  const margin = { punched: 25 * MM, open: 15 * MM, top: 15 * MM, bottom: 24 * MM };
  return {
    width,
    height,
    margin,
    sides: settings.sides,
    frame: width - margin.punched - margin.open,
    size: {
      text,
      small: at(0.84),
      tiny: at(0.58),
      title: at(text > HUGE ? 1.4 : 1.85),
      heading: at(1.15),
      number: at(text > HUGE ? 1.2 : 1.5),
    },
    floor,
    leading,
    hang: round(text * (text > HUGE ? 1.4 : 2.1)),
    cells: text > HUGE ? 0 : Math.max(40, round(text * 3.1)),
    step: round((text * leading) / 2),
    hairline: 0.5,
    ruled: Math.max(8.5 * MM, round(text * 1.9)),
    roomy: Math.max(1, text / 14),
  };
}

/** The same measures with less room to write in, so that a part of large print stays on one page. */
export function tighter(measures: Measures, share: number): Measures {
  return { ...measures, ruled: Math.max(8.5 * MM, round(measures.ruled * share)), roomy: Math.max(1, measures.roomy * share) };
}

/** Width of a marking cell. */
export function cellWidth(measures: Measures): number {
  return Math.max(measures.size.text * 2.2, 30);
}

/** Script size over text size, where no floor stands in the way. */
export const SCRIPT_RATIO = 0.7;

/** Size of a subscript or superscript beside text of a size: never under the floor. */
export function scriptSize(measures: Measures, size: number): number {
  return Math.max(measures.floor, round(size * SCRIPT_RATIO));
}

function round(length: number): number {
  return Math.round(length * 100) / 100;
}
