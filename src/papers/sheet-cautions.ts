import type { Paragraph } from '../document/block.ts';
import type { Words } from '../document/words.ts';
import type { Caution, Question } from '../questions/question.ts';

/** Cautions of all questions, each once: they stand together on a sheet of which two questions or more carry some. */
export function gatheredCautions(questions: readonly Question[]): Caution[] {
  const carrying = questions.filter(({ cautions }) => cautions.length > 0);
  if (carrying.length < 2) return [];
  return [...new Map(carrying.flatMap(({ cautions }) => cautions.map((each) => [each.caution, each] as const))).values()];
}

/** Every line, and what goes for all practical work. */
export function fullCaution(cautions: readonly Caution[], words: Words): Paragraph {
  const caution = cautions.map((each) => each.caution).join(' ');
  return { kind: 'paragraph', weight: 'caution', content: words.inline('caution', { caution }) };
}

/** The substances of one question, by the names under which their lines stand at the head of the sheet. */
export function referToCautions(cautions: readonly Caution[], words: Words): Paragraph {
  const names = cautions.map(({ caution }) => lowered(caution.replace(/:.*$/s, '')));
  const last = names.at(-1)!;
  const substances = names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${last}` : last;
  return { kind: 'paragraph', weight: 'caution', content: words.inline('caution-above', { substances }) };
}

const lowered = (words: string): string => `${words[0]?.toLowerCase() ?? ''}${words.slice(1)}`;
