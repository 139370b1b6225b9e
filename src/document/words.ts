import Handlebars from 'handlebars';
import { Fault } from '../exact/fault.ts';
import type { Block } from './block.ts';
import type { Inline } from './inline.ts';
import { checkContext } from './template-context.ts';
import { checkTemplate } from './template-rules.ts';
import { paragraphsOf } from './template-text.ts';
import { HELPERS, TokenStore } from './template-tokens.ts';

/** Words of one template file, ready to be filled in. */
export interface Words {
  /**
   * One run of prose.
   * @param section name of a section of the template file; where it stands several times, one phrasing is chosen
   * @param context plain data and inlines that the section names
   * @throws Fault `missing-wording`, `bad-wording`
   */
  inline(section: string, context?: WordsContext): Inline[];
  /** The same as paragraphs: blank lines part them. */
  blocks(section: string, context?: WordsContext): Block[];
  has(section: string): boolean;
  /** The same words with phrasings chosen by `choose(count)`, a whole number from 0 to count − 1. The first phrasing is the default. */
  chosenBy(choose: (count: number) => number): Words;
}

export type ContextValue =
  | string
  | number
  | boolean
  | undefined
  | Inline
  | readonly Inline[]
  | readonly ContextValue[]
  | WordsContext;
export interface WordsContext {
  readonly [name: string]: ContextValue;
}

interface Section {
  readonly line: number;
  readonly text: string;
  compiled?: Handlebars.TemplateDelegate;
}

type Sections = ReadonlyMap<string, readonly Section[]>;

/**
 * Reads a template file: sections that begin with a line `=== name`; text before the first is a comment.
 * A name that stands several times gives several phrasings.
 * @param overlay the same file from a department's own folder: its sections replace those of that name
 */
export function readWords(file: string, text: string, overlay?: { readonly file: string; readonly text: string }): Words {
  const sections = new Map(sectionsOf(text));
  const own = overlay ? sectionsOf(overlay.text) : new Map<string, Section[]>();
  for (const [name, phrasings] of own) sections.set(name, phrasings);
  return wordsOf(
    (name) => (overlay && own.has(name) ? overlay.file : file),
    sections,
    () => 0,
  );
}

function sectionsOf(text: string): Map<string, Section[]> {
  const sections = new Map<string, Section[]>();
  let lines: string[] = [];
  let head: { name: string; line: number } | undefined;
  const close = () => {
    if (!head) return;
    const phrasings = sections.get(head.name) ?? [];
    sections.set(head.name, [...phrasings, { line: head.line, text: lines.join('\n').trim() }]);
  };
  text.split(/\r?\n/).forEach((line, index) => {
    const opening = /^=== *(\S.*?) *$/.exec(line);
    if (!opening) {
      lines.push(line);
      return;
    }
    close();
    head = { name: opening[1]!, line: index + 1 };
    lines = [];
  });
  close();
  return sections;
}

function wordsOf(fileOf: (section: string) => string, sections: Sections, choose: (count: number) => number): Words {
  const render = (name: string, context: WordsContext): Inline[][] => {
    const phrasings = sections.get(name);
    if (!phrasings) throw new Fault('missing-wording', `expected a section \`=== ${name}\``, { file: fileOf(name) });
    const section = phrasings.length === 1 ? phrasings[0]! : phrasings[choose(phrasings.length)]!;
    return renderSection(section, fileOf(name), name, context);
  };
  return {
    inline: (name, context = {}) =>
      render(name, context).flatMap((paragraph, at) => (at === 0 ? paragraph : [{ kind: 'text', text: ' ' }, ...paragraph])),
    blocks: (name, context = {}) => render(name, context).map((content) => ({ kind: 'paragraph', content })),
    has: (name) => sections.has(name),
    chosenBy: (next) => wordsOf(fileOf, sections, next),
  };
}

function renderSection(section: Section, file: string, name: string, context: WordsContext): Inline[][] {
  const place = { file, line: section.line };
  section.compiled ??= compile(section.text, file, section.line);
  checkContext(context, name);
  const tokens = new TokenStore();
  try {
    return paragraphsOf(section.compiled(context, { data: { tokens } }), tokens);
  } catch (error) {
    if (error instanceof Fault) throw new Fault(error.code, `in \`${name}\`: ${error.message}`, place);
    const message = error instanceof Error ? error.message : String(error);
    throw new Fault('bad-wording', `\`${name}\` cannot be filled in: ${message}`, place);
  }
}

/** An engine of our own, so that nothing registered elsewhere leaks in. */
const engine = Handlebars.create();
for (const helper of ['log', 'lookup', 'with']) engine.unregisterHelper(helper);
for (const [name, helper] of Object.entries(HELPERS)) engine.registerHelper(name, helper);

function compile(text: string, file: string, line: number): Handlebars.TemplateDelegate {
  checkTemplate(text, file, line);
  return engine.compile(text, {
    strict: true,
    noEscape: true,
    knownHelpersOnly: true,
    knownHelpers: { f: true, eq: true, q: true, term: true, run: true } as unknown as Record<string, boolean>,
  } as CompileOptions);
}

type CompileOptions = Parameters<typeof Handlebars.compile>[1];
