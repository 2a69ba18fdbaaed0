export { heatOfAir, keptShare, outletTemperature } from './ductHeat.ts';
export type { FittingKind } from './fittings.ts';
export { abruptWidening, lossCoefficients, roundElbow } from './fittings.ts';
export { compressionFactor, flexibleRoughness } from './flexible.ts';
export type { Air, Straight } from './friction.ts';
export { colebrookResidual, frictionFactor, frictionGrowth, straightDrop } from './friction.ts';
export { dischargeCoefficient, leakagePerArea, orificeFlow, orificePressure } from './orifice.ts';
export { equivalentRound, hydraulicDiameter, ovalEquivalent } from './shape.ts';
