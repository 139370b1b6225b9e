import { readFileSync } from 'node:fs';
import { command } from '../command.ts';
import { systemFault } from '../system-fault.ts';

export const inspect = command({
  name: 'inspect',
  summary: 'look a printed file over: pages, fonts, smallest text, tags, and whatever is wrong',
  operand: { name: 'FILE', help: 'a PDF file that couplet printed', count: 'one' },
  options: ['aloud', 'json'],
  example: { line: 'couplet inspect out/tavolin/questions.pdf', does: 'ends with status 1 when something is wrong' },
  run: async (given, [path], desk) => {
    const bytes = bytesOf(path!);
    const { inspect: inspected } = await import('../../readers/inspect.ts');
    const { tellInspection } = await import('../tell-inspection.ts');
    if (given.aloud) {
      const { readPdf } = await import('../../readers/read-pdf.ts');
      const { readingOrder } = await import('../../readers/reading-order.ts');
      desk.print(readingOrder(readPdf(bytes)).join('\n'));
      return;
    }
    const inspection = inspected(bytes);
    desk.print(given.json ? JSON.stringify(inspection, undefined, 2) : tellInspection(inspection));
    if (inspection.faults.length > 0) process.exitCode = 1;
  },
});

function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    throw systemFault('cannot-read', `to read \`${path}\``, error);
  }
}
