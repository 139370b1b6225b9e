/** One character of a formula in plain notation, and where it stood in the text as typed. */
export interface Mark {
  readonly char: string;
  /** UTF-16 index in the text as typed */
  readonly at: number;
}

const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';
const SUPERSCRIPTS: ReadonlyMap<string, string> = new Map(
  [...'⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻'].map((char, index) => [char, '0123456789+-'[index]!]),
);
const SAME_AS: ReadonlyMap<string, string> = new Map([
  ['−', '-'],
  ['–', '-'],
  ['﹣', '-'],
  ['⋅', '·'],
  ['•', '·'],
  ['∙', '·'],
  ['*', '·'],
  ['.', '·'],
]);

/**
 * Reads Unicode scripts and look-alikes as plain notation: `Cr₂O₇²⁻` becomes the marks of `Cr2O7^2-`. A run of superscripts is
 * opened by a caret of its own, so that what follows it is a charge.
 */
export function scanFormula(text: string): Mark[] {
  const marks: Mark[] = [];
  let raised = false;
  for (let at = 0; at < text.length; at += 1) {
    const char = text[at]!;
    const superscript = SUPERSCRIPTS.get(char);
    if (superscript !== undefined && !raised && marks.at(-1)?.char !== '^') marks.push({ char: '^', at });
    raised = superscript !== undefined;
    const low = SUBSCRIPTS.indexOf(char);
    marks.push({ char: superscript ?? (low >= 0 ? String(low) : (SAME_AS.get(char) ?? char)), at });
  }
  return marks;
}
