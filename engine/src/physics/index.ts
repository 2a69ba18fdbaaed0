export * from './air/index.ts';
export * from './attic/index.ts';
export * from './conduction/index.ts';
export * from './flow/index.ts';
export { evaluateFormula } from './formula.ts';
export * from './glazing/index.ts';
export * from './infiltration/index.ts';
export * from './network/index.ts';
export * from './sun/index.ts';
