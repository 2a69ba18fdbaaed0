export type { ArrayLight, PanelArray } from './arrayYear.ts';
export { addArray, glassConstant } from './arrayYear.ts';
export type { ByTemperature } from './battery.ts';
export {
  capacityShare,
  coldLead,
  coldLithium,
  lithiumCharge,
  lithiumDischarge,
  peukertHours,
  yearsOfLife,
} from './battery.ts';
export type { Mounting } from './cellTemperature.ts';
export { cellAbsorbing, cellExponential, cellLinear, cellNominal, mountings } from './cellTemperature.ts';
export type { FuelLine } from './generator.ts';
export { engineAir, fuelLines, fuelRate, generatorKeeps, lineThrough } from './generator.ts';
export { arrayFor, batteryFor, dailyDirect, hoursToEmpty } from './handChain.ts';
export {
  incidenceDiffuse,
  incidenceExponential,
  incidenceFifth,
  incidencePhysical,
  incidenceReciprocal,
} from './incidence.ts';
export type { OwnInverter } from './inverter.ts';
export { inverterOut, tangentsOf } from './inverter.ts';
export { joinedLoss, modulePower, skyAbove } from './modulePower.ts';
export type { ReplayDemand, ReplaySystem } from './replay.kernel.ts';
export { generatorSteps, replay, replayDemand, replaySystem, shortSteps } from './replay.kernel.ts';
export { diodeAt, diodePoints } from './singleDiode.ts';
export * as powerSlots from './slots.ts';
export { coveredAfter, coversAnew, slides, snowLoss } from './snow.ts';
export { powerAtHand, stepPower } from './step.kernel.ts';
export type { PowerSystem } from './system.ts';
export { byDegree, degreeOf, startPower } from './system.ts';
