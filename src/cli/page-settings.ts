import { DEFAULT_SETTINGS, type Print, type Settings, type Tint } from '../printers/pdf/settings.ts';

interface PageGiven {
  readonly page: Settings['paper'];
  readonly print: Print;
  readonly tint: Tint;
}

/** How the pages are set, from the options that say so. */
export function pageSettings({ page, print, tint }: PageGiven): Settings {
  return { ...DEFAULT_SETTINGS, paper: page, print, ...(tint === 'none' ? {} : { tint }) };
}
