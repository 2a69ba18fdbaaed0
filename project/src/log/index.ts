export { dayText } from './civil.ts';
export type { LogClock } from './clock.ts';
export { clockSeen } from './clockSeen.ts';
export { encodingOf, type LogEncoding } from './encoding.ts';
export { type Faults, faultWords, type LogFault } from './faults.ts';
export { hourMeans, type LogHours } from './hourMeans.ts';
export { isLogTable, type LogTable } from './logTable.ts';
export { endLength, type LogBytes, type LogEnds, logEndsOf, logTextOfBytes, tailFrom } from './logText.ts';
export type { LogColumns } from './propose.ts';
export {
  type LogQuantity,
  type LogUnit,
  logQuantities,
  logQuantityIds,
  logUnits,
  quantityOf,
  unitsOfDimension,
} from './quantities.ts';
export { type LogEntry, type LogPlan, type LogRead, planLog, readLog, readLogText } from './readLog.ts';
