import type { Job, Plan } from '@kneewall/engine';
import type { Edit, Problem, Project, System } from '@kneewall/project';

/** A weather file as it was imported, by its SHA-256. */
export type WeatherText = { readonly sha: string; readonly text: string };

/** What the page tells the planning worker. It keeps the document itself, so that unchanged parts stay the same objects. */
export type ToPlanner =
  | { readonly type: 'open'; readonly revision: number; readonly project: Project; readonly units: System }
  | { readonly type: 'edit'; readonly revision: number; readonly edits: readonly Edit[] }
  | { readonly type: 'units'; readonly revision: number; readonly units: System }
  | { readonly type: 'weather'; readonly revision: number; readonly file: WeatherText | undefined };

/** What comes back: the plan of one revision, or that none could be made. */
export type FromPlanner =
  | {
      readonly type: 'plan';
      readonly revision: number;
      readonly plan: Plan;
      readonly wanted: readonly Job[];
      readonly ms: number;
      /** What was found wrong with the weather file. */
      readonly weather: readonly Problem[];
    }
  | { readonly type: 'failed'; readonly revision: number };
