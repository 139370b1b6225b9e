import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import type { Inline } from '../../src/document/inline.ts';

/**
 * Inlines from a line of test text: `{MnO4^-}` a formula, `{A -> B}` or `{A <=> B}` an equation, `{q 0.0200 mol dm^-3}` a quantity,
 * `{E°cell}` or `{c(Fe^2+)}` a symbol, `{frac a | b}` a fraction, `{gap 5}` a gap, `**words**` strong.
 */
export function say(line: string): Inline[] {
  return line.split(/(\{[^{}]*\}|\*\*[^*]+\*\*)/).flatMap((part): Inline[] => {
    if (part === '') return [];
    if (part.startsWith('**')) return [{ kind: 'text', text: part.slice(2, -2), weight: 'strong' }];
    return part.startsWith('{') ? [term(part.slice(1, -1))] : [{ kind: 'text', text: part }];
  });
}

function term(text: string): Inline {
  const quantity = /^q (\S+) ?(.*)$/.exec(text);
  if (quantity) return { kind: 'quantity', number: quantity[1]!, unit: quantity[2]! };
  const gap = /^gap (\d+)$/.exec(text);
  if (gap) return { kind: 'gap', width: Number(gap[1]) };
  const fraction = /^frac (.*) \| (.*)$/.exec(text);
  if (fraction) return { kind: 'fraction', above: nested(fraction[1]!), below: nested(fraction[2]!) };
  if (/ (->|<=>) /.test(text))
    return { kind: 'equation', equation: parseEquation(text), arrow: text.includes('<=>') ? 'reversible' : 'forward' };
  const symbol = /^([EcnVmMFT])(°?)(cell|[0-9])?(?:\((.*)\))?$/.exec(text);
  if (symbol && !/^(V|F)$/.test(text)) return symbolOf(symbol);
  return { kind: 'formula', formula: parseFormula(text) };
}

/** Inside a fraction, terms stand in `[ ]`. */
function nested(text: string): Inline[] {
  return say(text.replaceAll('[', '{').replaceAll(']', '}'));
}

function symbolOf([, letter, raised, lowered, of]: RegExpExecArray): Inline {
  return {
    kind: 'symbol',
    letter: letter!,
    ...(raised ? { raised } : {}),
    ...(lowered ? { lowered } : {}),
    ...(of ? { of: [{ kind: 'formula', formula: parseFormula(of) }] } : {}),
  };
}
