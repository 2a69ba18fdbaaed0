export { airDensity, airViscosity, standardPressure } from './atmosphere.ts';
export type { MoistAir, SecondProperty } from './moistAir.ts';
export {
  dewPoint,
  enthalpy,
  gasConstant,
  heatOfVapour,
  humidityRatio,
  moistAir,
  pressureOfRatio,
  ratioOfPressure,
  relativeHumidity,
  saturationRatio,
  specificVolume,
  wetBulb,
} from './moistAir.ts';
export { saturationPressure } from './saturation.ts';
