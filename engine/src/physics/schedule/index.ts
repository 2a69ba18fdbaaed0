/**
 * Planning work: what may be done when, by whom, where; the soonest end of all of it, found and proved; replanning that moves little;
 * chances. Give a `WorkSpec` to `planWork`; everything else is what it is made of.
 */
export type { LowerBounds } from './bounds.ts';
export { lowerBounds } from './bounds.ts';
export { breedPlan } from './breed.ts';
export type { ChanceOptions, Chances } from './chances.ts';
export { chanceBy, chancesOf } from './chances.ts';
export type { Placed } from './checkPlan.ts';
export { checkPlan } from './checkPlan.ts';
export { atShare, meanOf, plannedMinutes, quantilesOf, varianceOf } from './durations.ts';
export type { LaidPiece, StartTable, WorkLayout } from './layout.ts';
export { layWork } from './layWork.ts';
export type { PlacedPiece, PlannedWork, PlanOptions, WorkPlan } from './planWork.ts';
export { planWork } from './planWork.ts';
export { searchExactly } from './search/exact.ts';
export type { Effort, SolvedPlan } from './solvePlan.ts';
export { solvePlan } from './solvePlan.ts';
export { startTable } from './tables.kernel.ts';
export { wayTo } from './wayTo.ts';
export type { WhyThen } from './whyThen.ts';
export type {
  Span,
  ThreePoint,
  WorkCalendar,
  WorkPiece,
  WorkProblem,
  WorkResource,
  WorkSpec,
  WorkTask,
} from './work.ts';
