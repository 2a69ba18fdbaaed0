export type { LaidPiece, StartTable, WorkLayout } from './layout.ts';
export { layWork } from './layWork.ts';
export { startTable } from './tables.kernel.ts';
export { breedPlan } from './breed.ts';
export type { LowerBounds } from './bounds.ts';
export { lowerBounds } from './bounds.ts';
export { searchExactly } from './search/exact.ts';
