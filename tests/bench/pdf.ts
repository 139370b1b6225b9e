import { draw } from '../../src/printers/pdf/draw.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { SCHEME, SHEET } from '../pages/fixture.ts';
import { freshFonts } from '../pages/test-fonts.ts';
import { floorDocument } from './floor.ts';

/** Milliseconds of each of a number of runs, the middle one. */
function median(runs: number, work: () => unknown): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((one, other) => one - other);
  return times[Math.floor(runs / 2)]!;
}

const cold = performance.now();
const fonts = freshFonts();
draw(layout(SHEET, DEFAULT_SETTINGS, fonts), fonts);
process.stdout.write(`first document, fonts opened for it: ${(performance.now() - cold).toFixed(0)} ms\n`);

for (const [name, document] of Object.entries({ SHEET, SCHEME })) {
  const laid = layout(document, DEFAULT_SETTINGS, fonts);
  const items = laid.pages.reduce((sum, page) => sum + page.items.length, 0);
  for (let i = 0; i < 40; i++) {
    draw(layout(document, DEFAULT_SETTINGS, fonts), fonts);
    floorDocument(laid, fonts);
  }
  const floor = median(60, () => floorDocument(laid, fonts));
  const lay = median(60, () => layout(document, DEFAULT_SETTINGS, fonts));
  const whole = median(60, () => draw(layout(document, DEFAULT_SETTINGS, fonts), fonts));
  process.stdout.write(
    `${name}: ${laid.pages.length} pages, ${items} items: layout ${lay.toFixed(1)} ms, whole ${whole.toFixed(1)} ms; ` +
      `floor ${floor.toFixed(1)} ms; ratio ${(whole / floor).toFixed(2)}\n`,
  );
}
