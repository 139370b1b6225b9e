import { COMMAND_WORDS } from '../command-words.ts';
import { plainText } from './inlines-of.ts';
import type { GateRule } from './rule.ts';

/** Each written part has exactly one command word, the one it declares. A multiple-choice part asks a direct question. */
export const oneCommandWord: GateRule = {
  id: 'one-command-word',
  holds: 'a written part has exactly its own command word; a choice part ends in a question mark',
  check: ({ item }) =>
    item.parts.flatMap((part) => {
      const prompt = plainText(part.prompt);
      if (part.options) return prompt.trim().endsWith('?') ? [] : [`part ${part.id} asks no direct question`];
      const found = COMMAND_WORDS.filter((word) => new RegExp(`(?:^|[.:;] +)${word}\\b`).test(prompt));
      return found.length === 1 && found[0] === part.command
        ? []
        : [`part ${part.id} declares ${part.command} and says ${found.join(', ') || 'none'}`];
    }),
};
