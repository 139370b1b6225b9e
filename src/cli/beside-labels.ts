import type { Given } from './options.ts';

/**
 * What a question was asked with that its label does not hold, told for whoever takes labels from here to `couplet sheet --codes`.
 * @returns sentences; none when nothing is lost
 */
export function besideLabels(given: Given<'units' | 'without-colour-recall'>): string[] {
  const options = [
    ...(given['without-colour-recall'] ? ['--without-colour-recall'] : []),
    ...(given.units === 'dm' ? [] : [`--units ${given.units}`]),
  ];
  return options.length === 0
    ? []
    : [`A label does not hold ${options.join(' or ')}: give it to \`couplet sheet --codes\` as well.`];
}
