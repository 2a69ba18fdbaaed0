export type { Certificate } from './certificate.ts';
export { certify, provesInfeasible } from './certificate.ts';
export type { Dispatch } from './dispatch.ts';
export { dispatchProgramme } from './dispatch.ts';
export type { DispatchHouse } from './dispatchHouse.ts';
export type { DispatchProgramme, LinearProgramme, LinearSolver, Solved } from './programme.ts';
export { programmeBuilder } from './programme.ts';
