import { execFileSync } from 'node:child_process';
import { closed } from './our-text.ts';

/** Text of each page as poppler's pdftotext extracts it, in the order of the content. */
export function popplerPages(file: string): string[] {
  const pages = run('pdftotext', '-raw', '-enc', 'UTF-8', file, '-').split('\f');
  return pages.slice(0, -1).map(closed);
}

/** The structure as poppler's pdfinfo finds it, written as `structureText` writes ours. */
export function popplerStructure(file: string): string {
  return readStructure(run('pdfinfo', '-enc', 'UTF-8', '-struct-text', file));
}

/** Reads what `pdfinfo -struct-text` prints: types, attributes behind a slash, and texts in quotation marks. */
export function readStructure(printed: string): string {
  let text = '';
  let open = false;
  for (const line of printed.split('\n')) {
    const start: string | undefined = open ? line : /^ *"(.*)$/.exec(line)?.[1];
    if (start !== undefined) {
      open = !start.endsWith('"');
      text += closed(open ? start : start.slice(0, -1));
      continue;
    }
    const type = /^ *([A-Z][A-Za-z0-9]*)(?: \((?:block|inline)\))?:?$/.exec(line)?.[1];
    if (type !== undefined) text += `<${type}>`;
  }
  return text;
}

function run(program: string, ...args: readonly string[]): string {
  return execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
}
