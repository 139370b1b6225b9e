import { soak } from './soak.ts';

soak('24');
