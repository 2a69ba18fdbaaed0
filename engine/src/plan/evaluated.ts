import type { Job } from '../jobs/job.ts';
import type { Plan } from './plan.ts';

export type Evaluated = { readonly plan: Plan; readonly wanted: readonly Job[] };
