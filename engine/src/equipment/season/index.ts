export type { EuropeanPoint } from './europe.ts';
export { europeanSeason, pointAt } from './europe.ts';
export { type EuropeanClimate, europeanBins } from './europeClimate.ts';
export { meetingPoint, plainSeason } from './plainBins.ts';
export type { Season, SeasonRow } from './season.ts';
export { btuPerWattHour, celsius, type UsRegion, usCoolingBins, usHeatingBins, usRegions } from './usClimate.ts';
export { coolingLoad, designRequirements, heatingLoadOfCooling, olderHeatingLoad } from './usLoad.ts';
export {
  defrostCredit,
  inBtuPerWattHour,
  singleSpeedCooling,
  usCoolingSeason,
  usHeatingSeason,
} from './usSeason.ts';
export {
  assumedFrostTest,
  betweenLine,
  frostedLine,
  lineThrough,
  meetLoad,
  singleSpeed,
  type Test,
  usTests,
  variableSpeed,
} from './usUnits.ts';
