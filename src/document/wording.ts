import { Fault } from '../exact/fault.ts';
import { readWords, type Words } from './words.ts';

/** All templates by file name without `.hbs`, ready to be filled in. */
export interface Wording {
  /** changes whenever a template does; printed on the scheme and kept in the record */
  readonly digest: string;
  /** @throws Fault `missing-template` */
  words(name: string): Words;
}

/**
 * The wording in force.
 * @param templates file names such as `cell-emf.hbs`, with their text
 * @param overlay a department's own files of the same names; their sections replace ours
 * @param digest of all texts together (made by the caller, who has read them)
 */
export function wordingOf(
  templates: ReadonlyMap<string, string>,
  digest: string,
  overlay: ReadonlyMap<string, string> = new Map(),
): Wording {
  const unknown = [...overlay.keys()].find((file) => !templates.has(file));
  if (unknown !== undefined)
    throw new Fault('unknown-template', `no template is called \`${unknown}\`; there are: ${[...templates.keys()].join(', ')}`);
  const read = new Map<string, Words>();
  return {
    digest,
    words: (name) => {
      const file = `${name}.hbs`;
      const text = templates.get(file);
      if (text === undefined) throw new Fault('missing-template', `expected a template \`${file}\``);
      const own = overlay.get(file);
      const words = read.get(name) ?? readWords(file, text, own === undefined ? undefined : { file, text: own });
      read.set(name, words);
      return words;
    },
  };
}
