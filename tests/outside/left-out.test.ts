import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { casesOf } from './cases.ts';
import { leftOut } from './left-out.ts';

const kinds = readdirSync(new URL('data', import.meta.url)).flatMap((name) => /^worked-(.*)\.json$/.exec(name)?.[1] ?? []);

describe('what is left out', () => {
  it('has a reason each, and is named once', () => {
    for (const each of leftOut) expect(each.reason.length).toBeGreaterThan(10);
    const names = leftOut.map((each) => each.id ?? each.kind);
    expect(new Set(names).size).toBe(names.length);
  });
  it('is a case that we hold, or a whole kind of which we hold none', () => {
    for (const { id, kind, source } of leftOut) {
      if (id) expect(casesOf(kind).find((each) => each.id === id)?.source).toBe(source);
      else expect(kinds).not.toContain(kind);
    }
  });
  it('is a small part: every case names its source', () => {
    const cases = kinds.flatMap((kind) => casesOf(kind));
    expect(leftOut.filter((each) => each.id).length / cases.length).toBeLessThan(0.12);
    for (const each of cases) expect(each.source).not.toBe('');
  });
});
