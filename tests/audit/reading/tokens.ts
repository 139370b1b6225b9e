import { type PrintedNumber, readNumber } from '../exact/printed-number.ts';
import type { PlainInline } from '../plain.ts';
import { type Equation, readEquation } from './equation.ts';
import { equationText, formulaText, runText } from './inline-text.ts';
import { readSpecies, type Species } from './species.ts';

/** One thing read in a run of prose. `role` is what the tree says it prints; only used to find things, never to trust them. */
export type Token =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'species'; readonly species: Species; readonly role?: string | undefined }
  | { readonly kind: 'equation'; readonly equation: Equation; readonly role?: string | undefined }
  | { readonly kind: 'number'; readonly number: PrintedNumber; readonly unit: string; readonly role?: string | undefined }
  | { readonly kind: 'ratio'; readonly left: string; readonly right: string; readonly role?: string | undefined }
  | { readonly kind: 'unit'; readonly unit: string }
  | { readonly kind: 'symbol'; readonly name: string; readonly of: readonly Token[] }
  | { readonly kind: 'fraction'; readonly above: readonly Token[]; readonly below: readonly Token[] }
  | { readonly kind: 'gap' }
  /** something that should be a formula, an equation or a number and does not read as one */
  | { readonly kind: 'unread'; readonly text: string };

/** Words that stand side by side are one run of words, whatever their weight. */
export function tokensOf(run: readonly PlainInline[]): Token[] {
  const tokens: Token[] = [];
  for (const token of run.map(tokenOf)) {
    const last = tokens.at(-1);
    if (last?.kind === 'words' && token.kind === 'words') tokens[tokens.length - 1] = { ...last, text: last.text + token.text };
    else tokens.push(token);
  }
  return tokens;
}

function tokenOf(inline: PlainInline): Token {
  switch (inline.kind) {
    case 'text':
      return { kind: 'words', text: inline.text };
    case 'formula': {
      const species = readSpecies(formulaText(inline.formula));
      return species ? { kind: 'species', species, role: inline.role } : { kind: 'unread', text: runText([inline]) };
    }
    case 'equation': {
      const equation = readEquation(equationText(inline.equation, inline.arrow));
      return equation ? { kind: 'equation', equation, role: inline.role } : { kind: 'unread', text: runText([inline]) };
    }
    case 'quantity':
      return quantityOf(inline.number, inline.unit, inline.role);
    case 'symbol':
      return {
        kind: 'symbol',
        name: `${inline.letter}${inline.raised ?? ''}${inline.lowered ?? ''}`,
        of: tokensOf(inline.of ?? []),
      };
    case 'fraction':
      return { kind: 'fraction', above: tokensOf(inline.above), below: tokensOf(inline.below) };
    case 'gap':
      return { kind: 'gap' };
  }
}

function quantityOf(text: string, unit: string, role: string | undefined): Token {
  if (text === '') return { kind: 'unit', unit };
  const ratio = /^(\S+) : (\S+)$/.exec(text);
  if (ratio && unit === '') return { kind: 'ratio', left: ratio[1]!, right: ratio[2]!, role };
  const number = readNumber(text);
  return number ? { kind: 'number', number, unit, role } : { kind: 'unread', text: `${text} ${unit}` };
}

/** Every token of one kind, those inside fractions and symbols included, in reading order. */
export function everyToken<Kind extends Token['kind']>(tokens: readonly Token[], kind: Kind): Extract<Token, { kind: Kind }>[] {
  return tokens.flatMap((token) => [
    ...(token.kind === kind ? [token as Extract<Token, { kind: Kind }>] : []),
    ...(token.kind === 'fraction' ? everyToken([...token.above, ...token.below], kind) : []),
    ...(token.kind === 'symbol' ? everyToken(token.of, kind) : []),
  ]);
}
