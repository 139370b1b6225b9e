import type { GateRule } from './rule.ts';

/** A question that describes an operation carries the usual cautions. */
export const cautionsStand: GateRule = {
  id: 'cautions-stand',
  holds: 'a question with practical marks carries cautions, each with its words and its source',
  check: ({ item }) => {
    const practical = item.parts.some((part) => part.practical > 0);
    return [
      ...(practical && item.cautions.length === 0 ? ['an operation is described and no caution stands'] : []),
      ...item.cautions.flatMap(({ substance, caution, source }) =>
        caution && source ? [] : [`the caution for ${substance} has no words or no source`],
      ),
    ];
  },
};
