/**
 * Freezes plain objects and arrays all the way down; maps and sets are guarded by their read-only types, their members
 * frozen.
 */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  if (value instanceof Map) for (const member of value.values()) deepFreeze(member);
  else {
    Object.freeze(value);
    for (const member of Object.values(value)) deepFreeze(member);
  }
  return value;
}
