export { type Verdict, verdictOf } from '../verdict.ts';
export * from './boxes.ts';
export * from './corner.ts';
export * from './heat.ts';
export * from './joist.ts';
export * from './lifting.ts';
export * from './rectangle.ts';
export * from './rope.ts';
export * from './tilt.ts';
