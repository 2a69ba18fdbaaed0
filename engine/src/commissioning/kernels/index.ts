export { bagError, bagFlow } from './bag.ts';
export { flowFromHeat, flowFromTable, splitFromDuty } from './witness.ts';
