export type { SunPosition } from './position.ts';
export { refraction, sunPosition } from './position.ts';
export type { Irradiance } from './radiation.ts';
export {
  airMass,
  clearSky,
  diffuseShare,
  groundOnPlane,
  incidenceCosine,
  skyOnPlane,
  solarConstant,
} from './radiation.ts';
export { designDay, designDayShape } from './shape.ts';
export {
  declinationOf,
  extraterrestrialDay,
  extraterrestrialNormal,
  meanDays,
  simplePosition,
  sunsetAngle,
} from './simple.ts';
export { clearSkyEmittance, groundTemperature, skyTemperature } from './sky.ts';
