export { heatOfAir, keptShare, outletTemperature } from './ductHeat.ts';
export * from './fittings/index.ts';
export { compressionFactor, flexibleRoughness, sagTurn } from './flexible.ts';
export type { Air, Straight } from './friction.ts';
export { colebrookResidual, frictionFactor, frictionGrowth, straightDrop } from './friction.ts';
export { dischargeCoefficient, orificeArea, orificeFlow, orificesInSeries } from './orifice.ts';
export { equivalentRound, hydraulicDiameter } from './shape.ts';
