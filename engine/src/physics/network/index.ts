export type { CompiledNetwork } from './compile.ts';
export { compileNetwork } from './compile.ts';
export type { FanCurve } from './fanCurve.ts';
export { compileFan, fanPressure, fanSlope, operatingPoints } from './fanCurve.ts';
export type { NetworkSolution } from './solve.ts';
export { solveNetwork } from './solve.ts';
export type { NetworkLink, NetworkNode, NetworkSpec } from './spec.ts';
