import { describe, expect, it } from 'vitest';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import type { Answering, Level, Support } from '../../src/questions/question.ts';
import { tables, wording } from '../support/data.ts';
import { pageLines } from '../support/page-text.ts';

/**
 * One question of each family at each level, under each support and way of answering, as plain text. A change here is a change that users
 * see: renew with `npx vitest run --config tests/vitest.config.ts tests/laws/golden.test.ts -u` and read the difference.
 */
const SUPPORTS: readonly Support[] = ['open', 'prompts', 'completion', 'worked'];

function paper(family: string, level: Level, answering: Answering, support: Support) {
  const request = {
    seed: 'golden',
    name: 'golden',
    level,
    support,
    choice: answering === 'choice' ? 1 : 0,
    units: 'dm',
    families: [family],
    topics: [],
    without: [],
    length: { unit: 'questions', count: 1 },
  } as const;
  return makePaper(request, tables, wording, 'golden');
}

describe.each(FAMILIES.map((family) => ({ family, name: family.id })))('$name', ({ family }) => {
  it('says what it said before, at every level, support and way of answering', async () => {
    const ways = (['core', 'stretch'] as const).flatMap((level) => [
      ...SUPPORTS.map((support) => ({ level, support, answering: 'written' as const })),
      ...(family.answering.includes('choice') ? [{ level, support: 'open' as const, answering: 'choice' as const }] : []),
    ]);
    const text = ways.flatMap(({ level, support, answering }) => {
      const made = paper(family.id, level, answering, support);
      const sheet = pageLines(questionSheet(made, wording).blocks.filter(({ kind }) => kind === 'question' || kind === 'given'));
      const scheme =
        support === 'open' ? pageLines(markScheme(made, tables, wording).blocks.filter(({ kind }) => kind === 'scheme')) : [];
      return [`===== ${level}, ${support}, ${answering}`, ...sheet, ...scheme, ''];
    });
    await expect(`${text.join('\n')}\n`).toMatchFileSnapshot(`../golden/${family.id}.txt`);
  });
});
