import type { Couple } from '../../chemistry/couple.ts';
import { species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Part } from '../question.ts';
import { bare } from '../without-states.ts';

/**
 * The last part: the ionic equation of the reaction that is feasible. What follows from an earlier wrong answer earns its marks.
 * @param follows whether the way the reaction runs has been deduced in an earlier part
 */
export function equationPart(
  words: Words,
  context: WordsContext,
  section: string,
  { reduced, oxidised }: { readonly reduced: Couple; readonly oxidised: Couple },
  follows: boolean,
): Part {
  const filled = {
    oxidant: species(bare(reduced.oxidised)),
    reductant: species(bare(oxidised.reduced)),
    oxidantReduced: species(bare(reduced.reduced)),
    reductantOxidised: species(bare(oxidised.oxidised)),
  };
  return {
    id: 'c',
    command: 'Write',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline(section, context),
    hints: [words.inline('equation-hint')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      statementPoint({ step: 'direction', earns: words.inline('point-direction', filled), carries: follows }),
      valuePoint({
        step: 'equation',
        earns: words.inline('point-equation'),
        refuse: [words.inline('refuse-electrons-left')],
        ignore: [words.inline('ignore-arrow')],
        carries: true,
      }),
    ],
    answers: ['equation'],
  };
}
