import { soak } from './soak.ts';

soak('clear');
