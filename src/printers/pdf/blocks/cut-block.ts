import { INK, rule } from '../item.ts';
import type { Room } from '../room.ts';
import { type Slab, slab } from '../slab.ts';

/** Text from this size on leaves no room for two copies on a page. */
const ALONE = 24;

/** A dashed line over the whole width to cut along; copies in huge print start a page each. It is decoration to a reader. */
export function layCut(_cut: { readonly kind: 'cut' }, { pen, x, width }: Room): Slab[] {
  const { size, step } = pen.measures;
  if (size.text >= ALONE) return [{ above: 0, height: 0, items: [], after: 0, fresh: true }];
  return [slab(step, [{ ...rule(x, step / 2, width, 0, 0.8, INK.rule), dash: [5, 4] }], { above: step })];
}
