export type { HumidityClass } from './humidityClass.ts';
export { vapourExcess } from './humidityClass.ts';
export type { Interstitial, MonthAir, WetPlane } from './interstitial.ts';
export { airPermeability, interstitial } from './interstitial.ts';
export { magnusPressure, magnusTemperature } from './magnus.ts';
export type { VapourLayer } from './planes.ts';
export type { SurfaceAir } from './surface.ts';
export {
  jacketTemperature,
  leastFactor,
  leastTemperature,
  mouldFilm,
  mouldHumidity,
  surfaceFactor,
} from './surface.ts';
