export { rightMoreOften } from './deciding.ts';
export { firstOrderIndices } from './firstOrder.ts';
export { percentiles } from './percentiles.ts';
export { primitivePolynomials, sobolPoints } from './sobol.ts';
export type { TwoSets } from './total.ts';
export { rowOfRun, totalIndices, twoSets } from './total.ts';
export { triangular } from './triangular.ts';
