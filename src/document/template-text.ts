import { Fault } from '../exact/fault.ts';
import type { Inline } from './inline.ts';
import type { TokenStore } from './template-tokens.ts';

/**
 * Rendered text as paragraphs of inlines. Line ends are spaces, blank lines part paragraphs, `**word**` is strong.
 * @throws Fault `bad-wording` for a hole (`undefined`, `[object Object]`), left-over markup or an unpaired `**`
 */
export function paragraphsOf(rendered: string, tokens: TokenStore): Inline[][] {
  const hole = /\[object|\bundefined\b|\bNaN\b|\{\{|\}\}/.exec(rendered);
  if (hole) throw new Fault('bad-wording', `a hole was left: \`${hole[0]}\``);
  return rendered
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replace(/\s+/g, ' ').trim())
    .filter((paragraph) => paragraph !== '')
    .map((paragraph) => inlinesOf(paragraph, tokens));
}

function inlinesOf(paragraph: string, tokens: TokenStore): Inline[] {
  const pieces = paragraph.split('**');
  if (pieces.length % 2 === 0) throw new Fault('bad-wording', 'expected `**` in pairs');
  return pieces.flatMap((piece, at) =>
    tokens.read(piece).flatMap((part): Inline[] => {
      if (typeof part !== 'string') return [part];
      if (part === '') return [];
      return [at % 2 === 1 ? { kind: 'text', text: part, weight: 'strong' } : { kind: 'text', text: part }];
    }),
  );
}
