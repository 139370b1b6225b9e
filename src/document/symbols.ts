import { Fault } from '../exact/fault.ts';
import type { Inline, PhysicalSymbol } from './inline.ts';

/** Physical symbols that a wording may name. The standard sign is printed as a raised degree sign here and drawn as ⦵ by no printer. */
const SYMBOLS: Readonly<Record<string, Omit<PhysicalSymbol, 'kind'>>> = {
  'E°': { letter: 'E', raised: '°' },
  'E°cell': { letter: 'E', raised: '°', lowered: 'cell' },
  E: { letter: 'E' },
  n: { letter: 'n' },
  c: { letter: 'c' },
  V: { letter: 'V' },
  M: { letter: 'M' },
  m: { letter: 'm' },
  Ar: { letter: 'A', lowered: 'r' },
};

/** @throws Fault `unknown-symbol` */
export function symbol(name: string, of?: readonly Inline[]): PhysicalSymbol {
  const parts = SYMBOLS[name];
  if (!parts) throw new Fault('unknown-symbol', `expected one of ${Object.keys(SYMBOLS).join(', ')}, found \`${name}\``);
  return of ? { kind: 'symbol', ...parts, of } : { kind: 'symbol', ...parts };
}
