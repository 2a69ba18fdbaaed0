export { vapourExcess } from './indoor.ts';
export type { Interstitial, VapourLayer, VapourMonth } from './interstitial.ts';
export { interstitial } from './interstitial.ts';
export { dewPointMagnus, saturationMagnus } from './magnus.ts';
export type { SurfaceAir } from './surface.ts';
export { jacketTemperature, leastFactor, surfaceTemperature, temperatureFactor } from './surface.ts';
