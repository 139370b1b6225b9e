import type { Medium } from '../chemistry/couple.ts';
import type { Salt } from '../chemistry/species.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Tables } from '../potentials/tables.ts';
import { isBanned } from './may-meet.ts';

/** True when two substances from the shelf may stand in one mixture, the ions that come along with them included. */
export function mayMix(one: Salt, other: Salt, tables: Tables, medium: Medium): boolean {
  const brings = (salt: Salt) => [salt.gives, keyOf(salt.formula), ...salt.with.map(({ key }) => key)];
  return !isBanned([...brings(one), ...brings(other)], tables, medium);
}
