import type { GateRule } from './rule.ts';

/** Steps can be worked as listed: each needs only data and steps before it. */
export const stepsInOrder: GateRule = {
  id: 'steps-in-order',
  holds: 'each step needs only data and earlier steps, and every datum is used or a declared decoy',
  check: ({ item }) => {
    const known = new Set(item.data.map(({ id }) => id));
    const needed = new Set(item.steps.flatMap(({ needs }) => needs));
    const problems = item.steps.flatMap(({ id, needs }) => {
      const missing = needs.filter((need) => !known.has(need));
      const doubled = known.has(id);
      known.add(id);
      return [
        ...missing.map((need) => `step \`${id}\` needs \`${need}\`, which does not come before it`),
        ...(doubled ? [`\`${id}\` stands twice`] : []),
      ];
    });
    const unused = item.data.filter(({ id, decoy }) => needed.has(id) === (decoy === true));
    return [...problems, ...unused.map(({ id, decoy }) => (decoy ? `decoy \`${id}\` is used` : `datum \`${id}\` is not used`))];
  },
};
