import { soak } from './soak.ts';

soak('standard');
