/**
 * Copies beside the two sheets: the option that asks for each, and its file. Apart from what makes them, so that a help page loads no more
 * than their names.
 */
export const EXTRA_FILES = {
  data: 'data-page.pdf',
  teacher: 'teacher-copy.pdf',
  solutions: 'solutions.pdf',
  key: 'answer-key.pdf',
  feedback: 'feedback.pdf',
} as const;

export type Extra = keyof typeof EXTRA_FILES;

export const EXTRA_NAMES = Object.keys(EXTRA_FILES) as Extra[];
