import { parseFormula } from '../chemistry/parse-formula.ts';
import { Fault } from '../exact/fault.ts';
import type { Inline } from './inline.ts';
import { symbol } from './symbols.ts';

const OPEN = '\uE000';
const CLOSE = '\uE001';

/** Inlines that a rendered wording stands for, by number. */
export class TokenStore {
  readonly #inlines: Inline[][] = [];
  /** @returns text that stands for these inlines until the wording is read back */
  put(inlines: readonly Inline[]): string {
    this.#inlines.push([...inlines]);
    return `${OPEN}${this.#inlines.length - 1}${CLOSE}`;
  }
  /** Splits rendered text into plain text and the inlines behind its tokens. */
  read(text: string): (string | Inline)[] {
    const pieces = text.split(new RegExp(`${OPEN}(\\d+)${CLOSE}`));
    return pieces.flatMap((piece, at): (string | Inline)[] => (at % 2 === 0 ? [piece] : this.#inlines[Number(piece)]!));
  }
}

type Helper = (this: unknown, value: unknown, options: { readonly data: { readonly tokens: TokenStore } }) => string;

function only(helper: string, kinds: readonly Inline['kind'][]): Helper {
  return (value, { data }) => {
    if (!isInline(value) || !kinds.includes(value.kind)) {
      throw new Fault('bad-wording', `\`${helper}\` expects ${kinds.join(' or ')}, found ${tell(value)}`);
    }
    return data.tokens.put([value]);
  };
}

const formulaOnly = only('f', ['formula']);

/**
 * The helpers of a wording: `f` a formula (an inline, or caret notation as a literal), `eq` an equation, `q` a quantity, `term` a
 * physical symbol by name (`E°cell`), `run` any prepared run of inlines. Each throws on anything else. The store of tokens comes in as
 * data of the rendering.
 */
export const HELPERS: Readonly<Record<string, Helper>> = {
  f: (value, options) =>
    typeof value === 'string'
      ? options.data.tokens.put([{ kind: 'formula', formula: parseFormula(value) }])
      : formulaOnly.call(undefined, value, options),
  eq: only('eq', ['equation']),
  q: only('q', ['quantity']),
  term: (value, { data }) => data.tokens.put([symbol(String(value))]),
  run: (value, { data }) => {
    if (!Array.isArray(value) || !value.every(isInline)) {
      throw new Fault('bad-wording', `\`run\` expects prepared words, found ${tell(value)}`);
    }
    return data.tokens.put(value);
  },
};

function isInline(value: unknown): value is Inline {
  return typeof value === 'object' && value !== null && 'kind' in value && typeof value.kind === 'string';
}

function tell(value: unknown): string {
  return value === undefined ? 'nothing' : typeof value === 'object' ? 'something else' : `\`${String(value)}\``;
}
