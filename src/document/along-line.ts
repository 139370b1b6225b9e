import type { Inline } from './inline.ts';

/** The same with fractions written along the line, which is no higher for them: `(0.0215 × 25.0) ÷ 1000`. */
export function alongLine(inlines: readonly Inline[]): Inline[] {
  return inlines.flatMap((inline): Inline[] =>
    inline.kind === 'fraction'
      ? [...grouped(alongLine(inline.above)), { kind: 'text', text: ' ÷\u00a0' }, ...grouped(alongLine(inline.below))]
      : [inline],
  );
}

/** In brackets where it is more than one thing. */
function grouped(inlines: readonly Inline[]): Inline[] {
  const isOne = inlines.length === 1 && inlines[0]!.kind !== 'text';
  return isOne ? [...inlines] : [{ kind: 'text', text: '(' }, ...inlines, { kind: 'text', text: ')' }];
}
