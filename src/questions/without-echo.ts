import type { WorkingLine } from '../document/block.ts';

/** A line that repeats one number (`M(Zn) = 65.4 = 65.4 g mol⁻¹`) says it once. */
export function withoutEcho({ left, right }: WorkingLine): WorkingLine {
  const [first, sign, result] = right;
  const isEcho =
    right.length === 3 &&
    sign?.kind === 'text' &&
    sign.text.trim() === '=' &&
    result?.kind === 'quantity' &&
    (first?.kind === 'quantity' ? first.number === result.number : first?.kind === 'text' && first.text.trim() === result.number);
  return isEcho ? { left, right: [result] } : { left, right };
}
