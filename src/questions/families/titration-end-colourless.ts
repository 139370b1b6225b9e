import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Part, Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { Titration } from './titration-concentration-build.ts';

/** What every last part shares: its place, and that it is about practical work. */
export const END = { id: 'd', objective: 'application', maths: 0, practical: 1 } as const;

/** In place of the colours of an end point, for one mark: which species is in excess there. */
export function excessPart({ sides, context }: Titration, words: Words): Part {
  const [titrant, analyte] = [species(sides.titrant.reacts), species(sides.analyte.reacts)];
  return {
    ...END,
    command: 'State',
    prompt: words.inline('excess'),
    hints: [words.inline('excess-hint')],
    space: { kind: 'lines', count: 1 },
    points: [
      valuePoint({
        step: 'excess',
        earns: words.inline('point-excess', { titrant }),
        also: [words.inline('also-excess', { name: context.titrant })],
        refuse: [words.inline('refuse-excess', { analyte })],
      }),
    ],
    answers: ['excess'],
  };
}

export function excessStep({ sides }: Titration): Step {
  return plainStep(
    'excess',
    END.id,
    [],
    'past the end point the solution from the burette has nothing left to react with',
    () => ({
      kind: 'species',
      formula: sides.titrant.reacts,
    }),
  );
}

const RINSING = {
  amount: 'added water changes a concentration, not an amount',
  titre: 'the titre follows from the amount that reacts',
} as const;

/** In place of the reason why no indicator is needed, for two marks: why water in the flask does not matter. */
export function rinsingPart(titration: Titration, words: Words): Part {
  const context = reacting(titration);
  const point = (which: keyof typeof RINSING) =>
    statementPoint({
      step: `why-${which}`,
      earns: words.inline(`point-why-${which}`, context),
      refuse: [words.inline('refuse-rinsing')],
    });
  return {
    ...END,
    command: 'Explain',
    prompt: words.inline('rinsing'),
    hints: [words.inline('rinsing-hint')],
    space: { kind: 'lines', count: 4 },
    points: [point('amount'), point('titre')],
    answers: ['why-amount', 'why-titre'],
  };
}

export function rinsingSteps(titration: Titration, words: Words): Step[] {
  return (['amount', 'titre'] as const).map((which) =>
    plainStep(`why-${which}`, END.id, [], RINSING[which], () =>
      wordsValue(which, words.inline(`answer-why-${which}`, reacting(titration))),
    ),
  );
}

function reacting({ sides }: Titration) {
  return { titrant: species(sides.titrant.reacts), analyte: species(sides.analyte.reacts) };
}
