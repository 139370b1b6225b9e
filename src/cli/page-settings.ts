import { DEFAULT_SETTINGS, type Print, type Settings, type Tint } from '../printers/pdf/settings.ts';

interface PageGiven {
  readonly page: Settings['paper'];
  readonly print: Print;
  readonly sides: Settings['sides'];
  readonly tint: Tint;
  /** for what pupils write on only */
  readonly fillable?: boolean;
}

/** How the pages are set, from the options that say so. */
export function pageSettings({ page, print, sides, tint, fillable }: PageGiven): Settings {
  const more = { ...(tint === 'none' ? {} : { tint }), ...(fillable ? { fillable } : {}) };
  return { ...DEFAULT_SETTINGS, paper: page, print, sides, ...more };
}
