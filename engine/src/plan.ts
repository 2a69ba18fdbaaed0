import type { Project, System } from '@kneewall/project';
import { findAll } from './find.ts';
import { allFinders } from './finders.ts';
import type { Results } from './jobs/job.ts';
import type { Evaluated } from './plan/evaluated.ts';
import { coldMemo, type Memo } from './plan/memo.ts';
import { tellAll } from './tell.ts';

export type EvaluateOptions = {
  /** In whose units the words are. Without it the project's own choice. */
  readonly units?: System;
  /** Keeps what did not change between evaluations. The answer never depends on it. */
  readonly memo?: Memo;
};

/**
 * All that follows from a project and the results at hand, and the jobs that would tell more. Pure: equal inputs give
 * equal plans, to the bit. A fault in one trade blinds that trade only and is never taken for `ok`.
 */
export function evaluate(project: Project, results: Results, options: EvaluateOptions = {}): Evaluated {
  const memo = options.memo ?? coldMemo();
  const found = findAll(project, results, memo, allFinders);
  const units = options.units ?? (project.site?.units === 'si' ? 'si' : 'us');
  return tellAll(found, results, units, memo);
}
