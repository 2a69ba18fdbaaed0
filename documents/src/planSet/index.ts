export type { SheetMarks } from './changedSince.ts';
export type { PartId } from './partNames.ts';
export type { Letters, PlanSet } from './planSet.ts';
export { planMark, planSet } from './planSet.ts';
export type { Fonts, PrintProgress } from './print.ts';
export { printPlanSet } from './print.ts';
export type { SetInput } from './setInput.ts';
export { sheetMarks } from './sheetMarks.ts';
