import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';

/** What every page is made from. */
export type SetInput = {
  readonly plan: Plan;
  readonly project: Project;
  readonly units: System;
};
