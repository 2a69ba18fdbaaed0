import type { Job, Mark, Plan, Results } from '@kneewall/engine';
import type { Edit, Project, System } from '@kneewall/project';
import type { Difference } from './difference.ts';

/** What the page tells the planning worker. It keeps the document itself, so that unchanged parts stay the same objects. */
export type ToPlanner =
  | { readonly type: 'open'; readonly revision: number; readonly project: Project; readonly units: System }
  | { readonly type: 'edit'; readonly revision: number; readonly edits: readonly Edit[] }
  | { readonly type: 'units'; readonly revision: number; readonly units: System }
  | { readonly type: 'results'; readonly revision: number; readonly results: Results };

/**
 * What comes back: the plan of one revision, or that none could be made. How its findings stand comes ahead of the very
 * first plan, while the words for them are still on their way.
 */
export type FromPlanner =
  | { readonly type: 'marks'; readonly revision: number; readonly marks: readonly Mark[] }
  | {
      readonly type: 'plan';
      readonly revision: number;
      readonly plan: Plan;
      readonly wanted: readonly Job[];
      readonly ms: number;
    }
  | { readonly type: 'failed'; readonly revision: number };

/** The same on its way: of a plan and the jobs it wants goes what is another than in the last one sent; first all of it. */
export type OnItsWay =
  | Exclude<FromPlanner, { readonly type: 'plan' }>
  | {
      readonly type: 'changed';
      readonly revision: number;
      readonly difference: Difference | undefined;
      readonly ms: number;
    };

/** What both sides keep of the last plan sent. */
export type LastSent = { readonly plan: Plan; readonly wanted: readonly Job[] };
