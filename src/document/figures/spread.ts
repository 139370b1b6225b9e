/**
 * Heights for labels that belong at `wanted` heights, in order, at least `pitch` apart and as near to them as that allows (least sum of
 * squares: neighbours that would touch are pooled around their mean).
 * @param wanted in ascending order
 */
export function spread(wanted: readonly number[], pitch: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const [at, height] of wanted.entries()) {
    let pool = { sum: height - at * pitch, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count)).map((base, at) => base + at * pitch);
}
