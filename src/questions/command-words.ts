/** The command words a part may use, one each (common practice in school science). */
export const COMMAND_WORDS = [
  'State',
  'Name',
  'Give',
  'Define',
  'Describe',
  'Explain',
  'Calculate',
  'Show that',
  'Deduce',
  'Determine',
  'Predict',
  'Suggest',
  'Compare',
  'Evaluate',
  'Sketch',
  'Draw',
  'Label',
  'Write',
] as const;

export type CommandWord = (typeof COMMAND_WORDS)[number];

/** The fewest marks a part may carry under each word: an explanation needs cause and effect. */
export function leastMarks(command: CommandWord): number {
  return command === 'Explain' || command === 'Compare' || command === 'Evaluate' ? 2 : 1;
}
