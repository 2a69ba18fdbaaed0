export { leakageFlowBasic } from './basic.ts';
export { leakageArea, leakageCoefficient, normalisedLeakage, usualExponent } from './blowerDoor.ts';
export { eaveWind, meanPressureCoefficient, stackGradient, wallPressureCoefficient } from './drives.ts';
export { ductLeakExponent, leakAt, leakageOfClass } from './ductLeakage.ts';
export type { Envelope } from './enhanced.ts';
export { leakageFlow, leakageTerms } from './enhanced.ts';
