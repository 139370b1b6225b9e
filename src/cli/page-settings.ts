import { DEFAULT_SETTINGS, type Print, type Settings, type Tint } from '../printers/pdf/settings.ts';

interface PageGiven {
  readonly page: Settings['paper'];
  readonly print: Print;
  readonly tint: Tint;
  /** for what pupils write on only */
  readonly fillable?: boolean;
}

/** How the pages are set, from the options that say so. */
export function pageSettings({ page, print, tint, fillable }: PageGiven): Settings {
  const more = { ...(tint === 'none' ? {} : { tint }), ...(fillable ? { fillable } : {}) };
  return { ...DEFAULT_SETTINGS, paper: page, print, ...more };
}
