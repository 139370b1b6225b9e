/** Orders places on a sheet: `2a` before `2c` before `10a`. */
export function byPlace(one: string, other: string): number {
  return Number.parseInt(one, 10) - Number.parseInt(other, 10) || (one < other ? -1 : one > other ? 1 : 0);
}
