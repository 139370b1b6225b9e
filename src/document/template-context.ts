import { Fault } from '../exact/fault.ts';

/** Private-use characters stand for inlines inside a rendered wording, so no text from outside may hold them. */
const PRIVATE_USE = /[\uE000-\uF8FF]/;

/**
 * Accepts plain data only: a getter, a class instance or a private-use character in what fills a wording is refused.
 * @throws Fault `bad-wording-data`
 */
export function checkContext(value: unknown, name: string): void {
  if (typeof value === 'string' && PRIVATE_USE.test(value)) {
    throw new Fault('bad-wording-data', `what fills \`${name}\` holds a private-use character, which no text may`);
  }
  if (typeof value === 'function')
    throw new Fault('bad-wording-data', `what fills \`${name}\` holds a function; plain data was expected`);
  if (typeof value !== 'object' || value === null) return;
  // Inlines carry chemistry values (exact numbers are class instances); they enter only through helpers, which check their kind.
  if ('kind' in value) return;
  if (Array.isArray(value)) {
    for (const entry of value) checkContext(entry, name);
    return;
  }
  if (Object.getPrototypeOf(value) !== Object.prototype) {
    throw new Fault('bad-wording-data', `what fills \`${name}\` is not plain data`);
  }
  for (const [key, entry] of Object.entries(value)) checkContext(entry, `${name}.${key}`);
}
