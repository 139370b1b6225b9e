import { soak } from './soak.ts';

soak('large');
