import type { Token } from './tokens.ts';

/** Tokens as one line of plain text again: for looking at words around what has been read. */
export function runTokensText(tokens: readonly Token[]): string {
  return tokens.map(tokenText).join('');
}

function tokenText(token: Token): string {
  switch (token.kind) {
    case 'words':
      return token.text;
    case 'species':
      return token.species.key;
    case 'equation':
      return token.equation.text;
    case 'number':
      return `${token.number.text} ${token.unit}`.trim();
    case 'ratio':
      return `${token.left} : ${token.right}`;
    case 'unit':
      return token.unit;
    case 'symbol':
      return `${token.name}${token.of.length > 0 ? `(${runTokensText(token.of)})` : ''}`;
    case 'unread':
      return token.text;
    default:
      return '';
  }
}
