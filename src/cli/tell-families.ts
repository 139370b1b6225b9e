import type { FamilyFacts, LevelFacts } from './family-facts.ts';

/** A few lines for each family. */
export function briefly(families: readonly FamilyFacts[]): string {
  const entries = families.map(({ id, title, asksFor, topics, levels, misconceptions }) =>
    [
      `${id}: ${title}`,
      `  ${asksFor}`,
      `  topics: ${topics.join(', ')}`,
      ...levels.map((level) => `  ${levelLine(level)}`),
      `  ${misconceptions.length} misconceptions followed`,
    ].join('\n'),
  );
  return `${entries.join('\n\n')}\n\n\`couplet families ID\` tells all about one.`;
}

/** All there is to say about one family. */
export function fully({ id, title, asksFor, topics, demand, answering, levels, misconceptions }: FamilyFacts): string {
  return [
    `${id}: ${title}`,
    `  ${asksFor}`,
    '',
    `Topics:    ${topics.join(', ')}`,
    ...levels.map((level, at) => `${at === 0 ? 'Levels:  ' : '         '}  ${levelLine(level)}`),
    `Answered:  ${answering.map((each) => (each === 'choice' ? 'by multiple choice' : 'in writing')).join(' or ')}`,
    `Harder by: ${demand.join('; ')}`,
    '',
    'Misconceptions that the mark scheme follows through:',
    ...misconceptions.flatMap((each) => [`  ${each.id}: ${each.name}`, `    ${each.reasoning}`]),
  ].join('\n');
}

function levelLine({ level, marks, minutes }: LevelFacts): string {
  return `${level}, ${range(marks)} marks, ${range(minutes)} minutes`;
}

function range([least, most]: readonly [number, number]): string {
  return least === most ? String(least) : `${least} to ${most}`;
}
