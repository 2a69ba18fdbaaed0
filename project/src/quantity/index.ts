export { glued } from './glued.ts';
export type { Kind, QuantityKind, System, Unit } from './kinds.ts';
export { kindNames, kindOf, kinds, unitLabel } from './kinds.ts';
export { monthNames, shortMonths } from './months.ts';
export type { Parsed, Reading } from './parse.ts';
export { parseQuantity } from './parse.ts';
export { formatRange, printQuantity, understood } from './print.ts';
export { refusalWords } from './refusal.ts';
