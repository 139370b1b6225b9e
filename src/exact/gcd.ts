/** Greatest common divisor, never negative; gcd(0, 0) is 0. */
export function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** Least common multiple of two integers, never negative. */
export function lcm(a: bigint, b: bigint): bigint {
  if (a === 0n || b === 0n) return 0n;
  const product = (a / gcd(a, b)) * b;
  return product < 0n ? -product : product;
}
