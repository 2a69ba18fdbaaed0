export * from './frost.ts';
export * from './pan.ts';
export * from './pump.ts';
export * from './slope.ts';
export * from './trap.ts';
export * from './water.ts';
