import { join } from 'node:path';
import type { Paper } from '../papers/paper.ts';
import type { Desk } from './desk.ts';
import type { MadeSet } from './make-set.ts';

/** Prints what was written where: paths for people and scripts, or one JSON object. */
export function tellSet(folder: string, { paper, files }: MadeSet, json: boolean, desk: Desk): void {
  const paths = [...files.keys()].map((name) => join(folder, name));
  if (json) desk.print(JSON.stringify(summary(folder, paper, paths), undefined, 2));
  else for (const path of paths) desk.print(path);
  const count = `${paper.questions.length} ${paper.questions.length === 1 ? 'question' : 'questions'}`;
  desk.say(
    `${count}, ${paper.marks} marks, ${paper.minutes} minutes (${paper.minutesWithExtra} with extra time); seed: ${paper.request.seed}`,
  );
}

function summary(folder: string, paper: Paper, files: readonly string[]) {
  return {
    folder,
    files,
    seed: paper.request.seed,
    title: paper.title,
    marks: paper.marks,
    minutes: paper.minutes,
    minutesWithExtra: paper.minutesWithExtra,
    questions: paper.questions.map(({ family, code }, at) => ({ number: at + 1, family, code })),
  };
}
