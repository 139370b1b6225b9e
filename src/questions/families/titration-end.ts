import { species } from '../../document/inlines.ts';
import type { Words } from '../../document/words.ts';
import { statementPoint } from '../point.ts';
import type { Part, Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { Value } from '../value.ts';
import type { Titration } from './titration-concentration-build.ts';
import { END, excessPart, excessStep, rinsingPart, rinsingSteps } from './titration-end-colourless.ts';

/** Last part of a titration: its end point, by colour unless colours are not to be recalled. */
export function endPart(titration: Titration, words: Words): Part {
  const { explainsEnd, ask } = titration;
  if (ask.withoutColours) return explainsEnd ? rinsingPart(titration, words) : excessPart(titration, words);
  return explainsEnd ? explainedPart(titration, words) : colourPart(titration, words);
}

export function endSteps(titration: Titration, words: Words): Step[] {
  const { explainsEnd, ask } = titration;
  if (ask.withoutColours) return explainsEnd ? rinsingSteps(titration, words) : [excessStep(titration)];
  return explainsEnd ? explainedSteps(titration, words) : [colourStep(titration, words)];
}

function colourPart({ system: { before, after, alsoAccepted } }: Titration, words: Words): Part {
  return {
    ...END,
    command: 'Describe',
    prompt: words.inline('end'),
    hints: [words.inline('end-hint')],
    space: { kind: 'lines', count: 2 },
    points: [
      statementPoint({
        step: 'end',
        earns: words.inline('point-end', { before, after }),
        also: alsoAccepted.map((also) => words.inline('also-end', { also })),
        refuse: [words.inline('refuse-end')],
      }),
    ],
    answers: ['end'],
  };
}

function colourStep({ system }: Titration, words: Words): Step {
  return plainStep('end', END.id, [], 'what is left over after one more drop gives the colour', () =>
    endValue(system.before, system.after, words),
  );
}

/** An end point as a value. */
export function endValue(before: string, after: string, words: Words): Value {
  return wordsValue(`${before} > ${after}`, words.inline('answer-end', { before, after }));
}

function explainedPart(titration: Titration, words: Words): Part {
  const context = colouredContext(titration);
  const point = (which: string) =>
    statementPoint({
      step: `why-${which}`,
      earns: words.inline(`point-why-${which}`, context),
      refuse: [words.inline('refuse-why')],
    });
  return {
    ...END,
    command: 'Explain',
    prompt: words.inline('no-indicator'),
    hints: [words.inline('no-indicator-hint')],
    space: { kind: 'lines', count: 4 },
    points: [point('strong'), point('drop')],
    answers: ['why-strong', 'why-drop'],
  };
}

function explainedSteps(titration: Titration, words: Words): Step[] {
  const principle = 'a titrant shows its own end point when it is strongly coloured and its product is not';
  return ['strong', 'drop'].map((which) =>
    plainStep(`why-${which}`, END.id, [], principle, () =>
      wordsValue(which, words.inline(`answer-why-${which}`, colouredContext(titration))),
    ),
  );
}

function colouredContext({ sides }: Titration) {
  return { titrant: species(sides.titrant.reacts), product: species(sides.titrant.product) };
}
