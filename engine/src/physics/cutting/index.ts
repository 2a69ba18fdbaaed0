export { type BarJob, type BarPiece, type BarPlan, type BarStock, cutBars } from './bars/cutBars.ts';
export type { CutBar } from './bars/layBars.ts';
export type { CutProblem } from './problem.ts';
export type { Rect, ThroughCut } from './sheets/layout.ts';
export {
  type CutSheet,
  packSheets,
  type SheetJob,
  type SheetPiece,
  type SheetPlan,
  type SheetStock,
} from './sheets/packSheets.ts';
