import { createHash } from 'node:crypto';

/** Digits and capitals without I, L, O and U, so that a code can be read aloud and typed back. */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * The code of a question: 40 bits of SHA-256 over the JSON array of its parts, as eight characters in base 32.
 * @param parts paper seed, family, slot, variant
 */
export function codeOf(parts: readonly (string | number)[]): string {
  const digest = createHash('sha256').update(JSON.stringify(parts)).digest();
  let bits = 0n;
  for (const byte of digest.subarray(0, 5)) bits = (bits << 8n) | BigInt(byte);
  return Array.from({ length: 8 }, (_, at) => ALPHABET[Number((bits >> BigInt(35 - 5 * at)) & 31n)]).join('');
}

/** True for eight characters that a code can have. */
export function isCode(text: string): boolean {
  return text.length === 8 && [...text].every((character) => ALPHABET.includes(character));
}

/** First 12 hex digits of SHA-256: names a version of a table or of a wording. */
export function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 12);
}
