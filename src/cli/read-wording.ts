import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Wording, wordingOf } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import { digestOf } from '../random/code.ts';
import { systemFault } from './system-fault.ts';

/**
 * The wording in force: our templates, and a department's own laid over them.
 * @param root folder of the package
 * @param own folder of the department's templates
 */
export function readWording(root: string, own?: string): Wording {
  const templates = readTemplates(join(root, 'templates'));
  const overlay = own === undefined ? new Map<string, string>() : readOwn(own);
  return wordingOf(templates, digestOf(JSON.stringify([[...templates], [...overlay]])), overlay);
}

function readOwn(folder: string): Map<string, string> {
  try {
    const templates = readTemplates(folder);
    if (templates.size > 0) return templates;
  } catch (error) {
    throw systemFault('cannot-read', `to read templates in the folder \`${folder}\``, error);
  }
  throw new Fault('no-templates', `expected templates (files that end in .hbs) in the folder \`${folder}\`, found none`);
}

/** In order of name, whatever order the folder has. */
function readTemplates(folder: string): Map<string, string> {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.hbs') && !file.startsWith('.'))
    .sort();
  return new Map(files.map((file) => [file, readFileSync(join(folder, file), 'utf8')]));
}
