import { join } from 'node:path';
import type { SheetRequest } from '../../papers/request.ts';
import { besideLabels } from '../beside-labels.ts';
import { command } from '../command.ts';
import { folderName } from '../folder-name.ts';
import { LOOK_OPTIONS, lookOf } from '../look-of.ts';
import { replacing } from '../may-replace.ts';
import { plainText } from '../plain-text.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, writeSet } from '../write-set.ts';

export const another = command({
  name: 'another',
  summary: 'make another question like one, with other chemistry or figures',
  operand: { name: 'LABEL', help: 'the label of a question, such as `cell-emf:3V8DQQJN`', count: 'one' },
  options: [
    'without-colour-recall',
    'support',
    'units',
    'table',
    'wording',
    'title',
    ...LOOK_OPTIONS,
    'name',
    'out',
    'replace',
    'json',
  ],
  example: { line: 'couplet another cell-emf:3V8DQQJN', does: 'the same demand and marks, other half-cells' },
  run: async (given, [typed], desk) => {
    const { readLabel } = await import('../../papers/question-label.ts');
    const label = readLabel(typed!);
    const name = given.name === undefined ? `${label.family}-${label.code.toLowerCase()}-another` : folderName(given.name);
    const folder = join(given.out ?? 'out', name);
    const mayReplace = replacing(given.replace);
    checkPlace(folder, mayReplace);
    const request: SheetRequest = {
      seed: typed!,
      name,
      ...(given.title === undefined ? {} : { title: plainText('title', given.title) }),
      level: label.level,
      support: given.support,
      choice: label.answering === 'choice' ? 1 : 0,
      units: given.units,
      ...(given['without-colour-recall'] ? { withoutColourRecall: true } : {}),
      families: [label.family],
      topics: [],
      without: [],
      length: { unit: 'questions', count: 1 },
    };
    const { makeSetOf } = await import('../make-set.ts');
    const { anotherLike } = await import('../../papers/another-like.ts');
    const { questionOf } = await import('../../papers/paper-from-labels.ts');
    const { paperFrom } = await import('../../papers/make-paper.ts');
    const { labelOf, labelText } = await import('../../papers/question-label.ts');
    const set = makeSetOf(
      (means) => {
        const first = questionOf(label, 's1', request, means);
        return paperFrom(request, [anotherLike(first, [], request, means)], means);
      },
      lookOf(given),
      given,
      desk,
    );
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
    desk.say(`Its label: ${labelText(labelOf(set.paper.questions[0]!))}`);
    for (const line of besideLabels(given)) desk.say(line);
  },
});
