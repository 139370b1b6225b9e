import { family } from '../family.ts';
import { buildPrediction } from './predict-reaction-build.ts';
import { drawPrediction, type PredictDraw } from './predict-reaction-draw.ts';

export const predictReaction = family<PredictDraw>({
  id: 'predict-reaction',
  title: 'Will they react?',
  asksFor:
    'whether two species react, from their electrode potentials, with the reason and the equation; at stretch, which of three reagents',
  topics: ['electrode-potentials'],
  strategy: 'feasibility from potentials',
  demand: ['shape', 'outcome', 'acid', 'electron ratio', 'signs'],
  answering: ['written', 'choice'],
  misconceptions: [
    'EP-ADD',
    'EP-REVERSED',
    'EP-SIGN-DROPPED',
    'EP-MULTIPLIED',
    'EP-STRENGTH-REVERSED',
    'EP-WRONG-SPECIES',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-H-NOT-CANCELLED',
  ],
  draw: drawPrediction,
  build: buildPrediction,
});
