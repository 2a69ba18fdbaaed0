export { leakageFlowBasic } from './basic.ts';
export { leakageArea, leakageCoefficient, normalisedLeakage, usualExponent } from './blowerDoor.ts';
export type { Envelope } from './enhanced.ts';
export { leakageFlow, leakageTerms } from './enhanced.ts';
