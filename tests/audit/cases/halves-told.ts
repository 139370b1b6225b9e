import { formsOf } from '../chemistry/couples.ts';
import { electronsIn, halfBetween } from '../chemistry/half-equations.ts';
import { type Sides, turnedRound } from '../chemistry/sides.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { runTokensText } from '../reading/token-text.ts';
import { everyToken } from '../reading/tokens.ts';
import { couplesIn } from './potentials.ts';

export interface Half {
  readonly oxidised: string;
  readonly reduced: string;
  readonly half: Sides;
}

/**
 * Both half-equations as reductions, the oxidant's first: printed, or built from what the stem says turns into what.
 * @returns undefined when the question tells of none
 */
export function halvesTold(question: ReadQuestion, one: string, other: string): [Half, Half] | undefined {
  const printed: Half[] = halvesIn(question);
  const halves = printed.length > 0 ? printed : changesIn(question);
  const both = [one, other];
  const oxidant = halves.find(({ oxidised }) => both.includes(oxidised));
  const reductant = halves.find((each) => each !== oxidant && both.includes(each.reduced));
  return oxidant && reductant ? [oxidant, reductant] : undefined;
}

/** Half-equations of the tables, with potentials beside them or with none. */
function halvesIn(question: ReadQuestion): Half[] {
  const told = couplesIn(question);
  if (told.length > 0) return told;
  return everyToken(
    question.tables.flatMap(({ rows }) => rows.flat(2)),
    'equation',
  ).flatMap(({ equation }) => {
    const forms = electronsIn(equation).side() > 0 ? formsOf(equation) : undefined;
    return forms ? [{ ...forms, half: { left: equation.left, right: equation.right } }] : [];
  });
}

function changesIn({ stem, stemText }: ReadQuestion): Half[] {
  const change = stem.find((run) => /turns into|becomes|ends up as|makes/.test(runTokensText(run))) ?? [];
  const told = everyToken(change, 'species').map(({ species }) => species.key);
  // "makes Mn²⁺ from MnO₄⁻" names the product first.
  const keys = / from /.test(runTokensText(change)) ? [told[1], told[0], told[3], told[2]] : told;
  const medium = /alkal/.test(stemText) ? 'alkali' : 'acid';
  return [keys.slice(0, 2), keys.slice(2, 4)].flatMap(([from, to]) => {
    const half = from !== undefined && to !== undefined ? halfBetween(from, to, medium) : undefined;
    if (!half) return [];
    const reduction = electronsIn(half).side() > 0 ? half : turnedRound(half);
    const forms = formsOf(reduction);
    return forms ? [{ ...forms, half: reduction }] : [];
  });
}
