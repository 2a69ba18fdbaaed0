export type { KeptSun } from './keptSun.ts';
export { keptColumn } from './keptSun.ts';
export type { PlaneLight } from './plane.ts';
export { isotropicSky, lightOnPlane, skyHayDavies } from './plane.ts';
export type { SunPosition } from './position.ts';
export { refraction, sunPosition } from './position.ts';
export type { Irradiance } from './radiation.ts';
export {
  airMass,
  clearSky,
  diffuseShare,
  groundOnPlane,
  incidenceCosine,
  skyBrightness,
  skyOnPlane,
  solarConstant,
  sunLevel,
} from './radiation.ts';
export type { SunDay } from './rising.ts';
export { sunDay } from './rising.ts';
export { designDay, designDayShape, meanDayShape } from './shape.ts';
export {
  declinationOf,
  extraterrestrialDay,
  extraterrestrialNormal,
  extraterrestrialSpencer,
  meanDays,
  simplePosition,
  sunsetAngle,
} from './simple.ts';
export {
  clarkAllenEmittance,
  clearSkyEmittance,
  cloudFactor,
  cloudOfDiffuse,
  groundTemperature,
  skyRadiation,
  skyTemperature,
  stefanBoltzmann,
  swinbankTemperature,
} from './sky.ts';
export { splitGlobal } from './split.ts';
