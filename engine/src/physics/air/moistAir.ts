import { saturationPressure, saturationSlope } from './saturation.ts';

/** Water to dry air, ratio of molar masses. Source: `moist-air.constants`. */
export const molarRatio = 0.621945;
/** J/(kg K) of dry air. */
export const gasConstant = 287.042;

/** Humidity ratio from vapour pressure, Pa both; kg/kg. */
export const ratioOfPressure = (vapour: number, pressure: number): number =>
  (molarRatio * vapour) / (pressure - vapour);

/** Vapour pressure from humidity ratio; Pa. */
export const pressureOfRatio = (w: number, pressure: number): number => (pressure * w) / (molarRatio + w);

export const saturationRatio = (t: number, pressure: number): number =>
  ratioOfPressure(saturationPressure(t), pressure);

/** One second property beside the dry bulb. */
export type SecondProperty =
  | { readonly rh: number }
  | { readonly wetBulb: number }
  | { readonly dewPoint: number }
  | { readonly w: number };

/** Humidity ratio, kg/kg, from the dry bulb (°C) and one second property at a pressure (Pa). */
export function humidityRatio(state: { readonly t: number } & SecondProperty, pressure: number): number {
  if ('w' in state) return state.w;
  if ('rh' in state) return ratioOfPressure(state.rh * saturationPressure(state.t), pressure);
  if ('dewPoint' in state) return ratioOfPressure(saturationPressure(state.dewPoint), pressure);
  return ratioOfWetBulb(state.t, state.wetBulb, pressure);
}

/** Below 0 °C the bulb is taken as iced. Source: `moist-air.wet-bulb` (ASHRAE Fundamentals 2017 ch. 1 eq. 33 and 35). */
export function ratioOfWetBulb(t: number, wetBulb: number, pressure: number): number {
  const ws = saturationRatio(wetBulb, pressure);
  return wetBulb >= 0
    ? ((2501 - 2.326 * wetBulb) * ws - 1.006 * (t - wetBulb)) / (2501 + 1.86 * t - 4.186 * wetBulb)
    : ((2830 - 0.24 * wetBulb) * ws - 1.006 * (t - wetBulb)) / (2830 + 1.86 * t - 2.1 * wetBulb);
}

/** kJ per kg dry air; zero is dry air and liquid water at 0 °C. */
export const enthalpy = (t: number, w: number): number => 1.006 * t + w * (2501 + 1.86 * t);

/** m³ per kg dry air. */
export const specificVolume = (t: number, w: number, pressure: number): number =>
  (gasConstant * (t + 273.15) * (1 + 1.607858 * w)) / pressure;

/** Relative humidity, 0 to 1 and above where supersaturated. */
export const relativeHumidity = (t: number, w: number, pressure: number): number =>
  pressureOfRatio(w, pressure) / saturationPressure(t);

/** Dew or frost point, °C; -Infinity for perfectly dry air. Newton on ln p; settles below 1e-10 K within 12 steps. */
export function dewPoint(w: number, pressure: number): number {
  const vapour = pressureOfRatio(w, pressure);
  if (!(vapour > 0)) return Number.NEGATIVE_INFINITY;
  // Magnus over water or ice (ISO 13788 form) starts within half a degree.
  const l = Math.log(vapour / 610.5);
  let t = l >= 0 ? (237.3 * l) / (17.269 - l) : (265.5 * l) / (21.875 - l);
  for (let i = 0; i < 12; i++) {
    const step = Math.log(vapour / saturationPressure(t)) / saturationSlope(t);
    t += step;
    if (Math.abs(step) < 1e-10) break;
  }
  return t;
}

/**
 * Wet bulb, °C. The wet-bulb relation rises steadily on each side of 0 °C and steps up at 0 °C from ice to water; a
 * state inside that step belongs to no bulb exactly and gets 0 °C. Newton with bisection as guard, at most 60 steps.
 */
export function wetBulb(t: number, w: number, pressure: number): number {
  const miss = (bulb: number): number => ratioOfWetBulb(t, bulb, pressure) - w;
  if (t > 0 && miss(0) >= 0 && miss(-1e-9) <= 0) return 0;
  const iced = t <= 0 || miss(0) > 0;
  let low = iced ? -120 : 0;
  let high = iced ? Math.min(t, -1e-9) : t;
  let bulb = Math.max(low, Math.min(high, (2 * t + dewPointFloor(w, pressure)) / 3));
  for (let i = 0; i < 60; i++) {
    const f = miss(bulb);
    if (f > 0) high = bulb;
    else low = bulb;
    const slope = (miss(bulb + 1e-4) - f) / 1e-4;
    const next = bulb - f / slope;
    const inside = next > low && next < high;
    const moved = inside ? next : (low + high) / 2;
    if (Math.abs(moved - bulb) < 1e-9) return moved;
    bulb = moved;
  }
  return bulb;
}

const dewPointFloor = (w: number, pressure: number): number => (w > 1e-7 ? dewPoint(w, pressure) : -80);

/** A whole state. °C, kg/kg, Pa, kJ/kg, m³/kg. */
export type MoistAir = {
  readonly t: number;
  readonly w: number;
  readonly vapourPressure: number;
  readonly rh: number;
  readonly dewPoint: number;
  readonly wetBulb: number;
  readonly enthalpy: number;
  readonly volume: number;
};

/** The whole state from the dry bulb and one second property. Bad input (NaN, negative pressure) gives NaN fields. */
export function moistAir(state: { readonly t: number } & SecondProperty, pressure: number): MoistAir {
  const { t } = state;
  const w = humidityRatio(state, pressure);
  const vapourPressure = pressureOfRatio(w, pressure);
  return {
    t,
    w,
    vapourPressure,
    rh: vapourPressure / saturationPressure(t),
    dewPoint: 'dewPoint' in state ? state.dewPoint : dewPoint(w, pressure),
    wetBulb: 'wetBulb' in state ? state.wetBulb : wetBulb(t, w, pressure),
    enthalpy: enthalpy(t, w),
    volume: specificVolume(t, w, pressure),
  };
}
