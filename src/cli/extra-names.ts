/** Options that ask for a copy beside the two sheets. Apart from what makes them, so that a help page loads no more than their names. */
export const EXTRA_NAMES = ['teacher', 'solutions', 'key', 'feedback'] as const;

export type Extra = (typeof EXTRA_NAMES)[number];
