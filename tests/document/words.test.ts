import { describe, expect, it } from 'vitest';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { quantity, species } from '../../src/document/inlines.ts';
import { readWords } from '../../src/document/words.ts';
import type { Fault } from '../../src/exact/fault.ts';

const words = (text: string) => readWords('test.hbs', text);
const faultOf = (run: () => unknown): Fault => {
  try {
    run();
  } catch (error) {
    return error as Fault;
  }
  throw new Error('expected a fault');
};

describe('a wording', () => {
  it('swaps what its helpers name for chemistry and quantities', () => {
    const filled = words('=== a\nAdd {{q volume}} of {{f acid}} to {{f "MnO4^-"}}.').inline('a', {
      volume: quantity('25.0', 'cm^3'),
      acid: species(parseFormula('H2SO4')),
    });
    expect(filled.map(({ kind }) => kind)).toEqual(['text', 'quantity', 'text', 'formula', 'text', 'formula', 'text']);
  });

  it('folds lines, parts paragraphs at blank lines, and sets **words** strong', () => {
    const blocks = words('=== a\nOne\ntwo.\n\nThree **four**.').blocks('a');
    expect(blocks).toHaveLength(2);
    expect(words('=== a\nThree **four**.').inline('a')[1]).toEqual({
      kind: 'text',
      text: 'four',
      weight: 'strong',
    });
  });

  it('chooses among phrasings of one section, the first by default', () => {
    const three = words('=== a\none\n=== a\ntwo\n=== a\nthree');
    expect(three.inline('a')).toEqual([{ kind: 'text', text: 'one' }]);
    expect(three.chosenBy((count) => count - 1).inline('a')).toEqual([{ kind: 'text', text: 'three' }]);
  });

  it("takes a department's own section in place of ours, and leaves the rest", () => {
    const own = readWords('test.hbs', '=== a\nours\n=== b\nkept', {
      file: 'own/test.hbs',
      text: '=== a\ntheirs',
    });
    expect(own.inline('a')).toEqual([{ kind: 'text', text: 'theirs' }]);
    expect(own.inline('b')).toEqual([{ kind: 'text', text: 'kept' }]);
  });

  it('refuses partials, decorators, foreign helpers and ways out of plain data, naming file and line', () => {
    for (const text of [
      '{{> part}}',
      '{{#*inline "x"}}{{/inline}}',
      '{{log "x"}}',
      '{{lookup a b}}',
      '{{#with a}}{{/with}}',
      '{{a.constructor}}',
      '{{../a}}',
      '{{@root}}',
    ]) {
      const fault = faultOf(() => words(`=== other\nfine\n=== a\n${text}`).inline('a', { a: {} }));
      expect(fault.code, text).toBe('bad-wording');
      expect(fault.place, text).toMatchObject({ file: 'test.hbs', line: 4 });
    }
  });

  it('refuses a hole, an object in the place of words, and markup that is not closed', () => {
    expect(faultOf(() => words('=== a\n{{missing}}').inline('a')).code).toBe('bad-wording');
    expect(faultOf(() => words('=== a\n{{thing}}').inline('a', { thing: { name: 'x' } })).code).toBe('bad-wording');
    expect(faultOf(() => words('=== a\nThis **is open').inline('a')).code).toBe('bad-wording');
    expect(faultOf(() => words('=== a\n{{q volume}}').inline('a', { volume: 'text' })).code).toBe('bad-wording');
    expect(faultOf(() => words('=== a\n{{#if open}}').inline('a')).code).toBe('bad-wording');
    expect(faultOf(() => words('=== a\nfine').inline('b')).code).toBe('missing-wording');
  });

  it('refuses text that could pass for a token, and data that is not plain', () => {
    expect(faultOf(() => words('=== a\n{{name}}').inline('a', { name: 'x\uE0000\uE001' })).code).toBe('bad-wording-data');
    const clever = {
      get name() {
        return 'x';
      },
    };
    expect(words('=== a\n{{name}}').inline('a', { name: 'x' })).toEqual([{ kind: 'text', text: 'x' }]);
    expect(
      faultOf(() =>
        words('=== a\n{{thing.name}}').inline('a', {
          thing: Object.create(clever) as Record<string, never>,
        }),
      ).code,
    ).toBe('bad-wording-data');
  });

  it('says text as it stands, quotes and angle brackets unchanged', () => {
    expect(words('=== a\n{{name}}').inline('a', { name: '<b> & "c"' })).toEqual([{ kind: 'text', text: '<b> & "c"' }]);
  });
});
