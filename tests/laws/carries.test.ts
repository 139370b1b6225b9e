import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { carriesFromSomething } from '../../src/questions/gate/carries-from-something.ts';
import { inlinesIn } from '../../src/questions/gate/inlines-of.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { seeds, tables, wording } from '../support/data.ts';

const AMOUNTS_AND_EQUATIONS = ['combine-halves', 'mole-ratio', 'titration-concentration'];

describe.each(FAMILIES.filter(({ id }) => AMOUNTS_AND_EQUATIONS.includes(id)).map((family) => ({ family, name: family.id })))(
  '$name',
  ({ family }) => {
    const questions = (['core', 'stretch'] as const).flatMap((level) =>
      seeds(60).map((seed) =>
        makeQuestion(family, slotOf(seed, family.id, 's1', 0), { level, answering: 'written', units: 'dm' }, tables, wording),
      ),
    );

    it('says "carries on" only where something of the pupil stands before', () => {
      for (const item of questions) {
        expect(carriesFromSomething.check({ item, tables, values: new Map(), rows: [] }), item.code).toEqual([]);
      }
    });

    it('prints no figure in a stem that nothing rests on', () => {
      for (const { stem, data, code } of questions) {
        const printed = inlinesIn(stem).flatMap((inline) => (inline.kind === 'quantity' && inline.role ? [inline.role] : []));
        const known = data.map(({ id }) => id);
        expect(
          printed.filter((role) => !known.includes(role)),
          code,
        ).toEqual([]);
      }
    });
  },
);
