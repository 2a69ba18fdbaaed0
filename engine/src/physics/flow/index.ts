export { heatOfAir, keptShare, outletTemperature } from './ductHeat.ts';
export type { FittingKind } from './fittings.ts';
export { lossCoefficients } from './fittings.ts';
export { compressionFactor, flexibleRoughness } from './flexible.ts';
export type { Air, Straight } from './friction.ts';
export { colebrookResidual, frictionFactor, frictionGrowth, straightDrop } from './friction.ts';
export { dischargeCoefficient } from './orifice.ts';
export { equivalentRound, hydraulicDiameter } from './shape.ts';
