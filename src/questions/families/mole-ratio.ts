import { family } from '../family.ts';
import { buildRatio } from './mole-ratio-build.ts';
import { drawRatio, type RatioDraw } from './mole-ratio-draw.ts';

export const moleRatio = family<RatioDraw>({
  id: 'mole-ratio',
  title: 'Reacting amounts in redox reactions',
  asksFor: 'the mole ratio of two reagents from half-equations or the equation, and how much of one reacts with the other',
  topics: ['oxidation-and-reduction', 'redox-titration'],
  strategy: 'reacting amounts',
  demand: ['told', 'known', 'asked', 'ratio', 'water of crystallisation', 'acid'],
  answering: ['written', 'choice'],
  misconceptions: [
    'TI-RATIO-ONE',
    'TI-RATIO-INVERTED',
    'TI-MASS-RATIO',
    'TI-ANHYDROUS-M',
    'TI-ONE-ATOM-M',
    'TI-CM3-AS-DM3',
    'TI-OXALATE-ONE-E',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-H-NOT-CANCELLED',
  ],
  draw: drawRatio,
  build: buildRatio,
});
