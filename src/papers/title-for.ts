import { FAMILIES } from '../questions/families/index.ts';
import type { Topic } from '../questions/family.ts';
import type { Question } from '../questions/question.ts';

/** Topics in the words of a page. */
export const TOPIC_TITLES: Readonly<Record<Topic, string>> = {
  'oxidation-and-reduction': 'Oxidation and reduction',
  'electrode-potentials': 'Electrode potentials',
  'redox-titration': 'Redox titrations',
  'transition-metals': 'Transition metals',
};

/** Topics that the questions touch, first topic of each family, in the order of the topic list. */
export function topicsOf(questions: readonly Pick<Question, 'family'>[]): string[] {
  const first = questions.flatMap(({ family }) => FAMILIES.find(({ id }) => id === family)?.topics.slice(0, 1) ?? []);
  return (Object.keys(TOPIC_TITLES) as Topic[]).filter((topic) => first.includes(topic)).map((topic) => TOPIC_TITLES[topic]);
}

/** A title when the teacher gives none. */
export function titleFor(questions: readonly Question[]): string {
  const topics = topicsOf(questions);
  return topics.length === 1 ? topics[0]! : 'Redox and transition metals';
}
