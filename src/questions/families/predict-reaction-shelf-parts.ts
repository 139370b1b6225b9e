import { standardEmf } from '../../chemistry/cell.ts';
import { quantity, species } from '../../document/inlines.ts';
import { printDecimal } from '../../exact/decimal.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Part } from '../question.ts';
import { type Asked, formulaOf } from './predict-reaction-draw.ts';
import { equationPart } from './predict-reaction-equation.ts';
import { pairedWith, type Shelf } from './predict-reaction-shelf.ts';

/** The parts about three reagents: which reacts, why the others do not, the equation. */
export function shelfParts(shelf: Shelf): Part[] {
  const { words, context, reacts } = shelf;
  return [reagentPart(shelf), othersPart(shelf), equationPart(words, context, 'equation-shelf', pairedWith(shelf, reacts), true)];
}

function emfText(shelf: Shelf, reagent: Asked) {
  const { reduced, oxidised } = pairedWith(shelf, reagent);
  return quantity(printDecimal(standardEmf(oxidised, reduced, 'printed'), true), 'V');
}

function reagentPart(shelf: Shelf): Part {
  const { words, context, reacts } = shelf;
  return {
    id: 'a',
    command: 'Deduce',
    objective: 'analysis',
    maths: 1,
    practical: 0,
    prompt: words.inline('which', context),
    hints: [words.inline('which-hint', context)],
    space: { kind: 'lines', count: 3 },
    points: [
      statementPoint({
        step: 'reagent',
        earns: [species(formulaOf(reacts))],
        also: [words.inline('also-reagent', context)],
        refuse: [words.inline('refuse-two-reagents')],
      }),
      valuePoint({
        step: 'emf',
        earns: words.inline('point-emf-reagent', { ...context, emf: emfText(shelf, reacts) }),
        also: [words.inline('sign-optional')],
        refuse: [words.inline('refuse-multiplied')],
        carries: true,
      }),
    ],
    answers: ['reagent', 'emf'],
  };
}

function othersPart(shelf: Shelf): Part {
  const { words, context, unable } = shelf;
  return {
    id: 'b',
    command: 'Explain',
    objective: 'analysis',
    maths: 1,
    practical: 0,
    prompt: words.inline('others', context),
    hints: [words.inline('others-hint')],
    space: { kind: 'lines', count: 4 },
    points: [
      valuePoint({
        step: 'emf-other',
        earns: words.inline('point-emf-other', { ...context, emf: emfText(shelf, unable) }),
        also: [words.inline('also-emf-other', context)],
        refuse: [words.inline('refuse-no-minus')],
      }),
      statementPoint({
        step: 'alike',
        earns: words.inline('point-alike', context),
        also: [words.inline('also-alike', context)],
        refuse: [words.inline('refuse-emf-decides')],
      }),
    ],
    answers: ['emf-other', 'alike'],
  };
}
