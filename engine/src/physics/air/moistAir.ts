import { lookNear, near } from './nearSaturation.ts';
import { lnSaturation, saturationPressure, saturationSlope } from './saturation.ts';

/** Water to dry air, ratio of molar masses. Source: `moist-air.constants`. */
export const molarRatio = 0.621945;
/** J/(kg K) of dry air. */
export const gasConstant = 287.042;
/** J/kg to evaporate water at 0 °C. */
export const heatOfVapour = 2.501e6;

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
  return ratioAtBulb(t, wetBulb, saturationRatio(wetBulb, pressure));
}

/** The same where the humidity ratio of saturated air at the bulb is known. */
const ratioAtBulb = (t: number, wetBulb: number, ws: number): number =>
  wetBulb >= 0
    ? ((2501 - 2.326 * wetBulb) * ws - 1.006 * (t - wetBulb)) / (2501 + 1.86 * t - 4.186 * wetBulb)
    : ((2830 - 0.24 * wetBulb) * ws - 1.006 * (t - wetBulb)) / (2830 + 1.86 * t - 2.1 * wetBulb);

/** kJ per kg dry air; zero is dry air and liquid water at 0 °C. */
export const enthalpy = (t: number, w: number): number => 1.006 * t + w * (2501 + 1.86 * t);

/** m³ per kg dry air. */
export const specificVolume = (t: number, w: number, pressure: number): number =>
  (gasConstant * (t + 273.15) * (1 + 1.607858 * w)) / pressure;

/** Relative humidity, 0 to 1 and above where supersaturated. */
export const relativeHumidity = (t: number, w: number, pressure: number): number =>
  pressureOfRatio(w, pressure) / saturationPressure(t);

/** Pa of saturated air at the warm and the cold side of the step at 0 °C. */
const [atZero, beneathZero] = [saturationPressure(0), saturationPressure(-1e-9)];
/** K: a step this short by the table leaves less than 1e-5 for the formula. */
const nearEnough = 0.01;
const lnMagnus = Math.log(610.5);

/**
 * Dew or frost point, °C; -Infinity for perfectly dry air. Newton by a table (`lookNear`), then on ln p by the formula:
 * a last step below 1e-5 K leaves 1e-10 K.
 */
export function dewPoint(w: number, pressure: number): number {
  const vapour = pressureOfRatio(w, pressure);
  if (!(vapour > 0)) return Number.NEGATIVE_INFINITY;
  // Magnus over water or ice (ISO 13788 form) starts within half a degree.
  const target = Math.log(vapour);
  const l = target - lnMagnus;
  let t = l >= 0 ? (237.3 * l) / (17.269 - l) : (265.5 * l) / (21.875 - l);
  for (let i = 0; i < 2 && lookNear(t); i++) {
    const step = (vapour - (near[0] ?? 0)) / (near[1] ?? 0);
    t += step;
    if (Math.abs(step) < nearEnough) break;
  }
  for (let i = 0; i < 12; i++) {
    const step = (target - lnSaturation(t)) / saturationSlope(t);
    t += step;
    if (Math.abs(step) < 1e-5) break;
  }
  return t;
}

/**
 * Wet bulb, °C. The wet-bulb relation rises steadily on each side of 0 °C and steps up at 0 °C from ice to water; a
 * state inside that step belongs to no bulb exactly and gets 0 °C. Newton by a table (`lookNear`), then by the formula
 * with bisection as guard, at most 60 steps.
 * `dew` is the dew point where it is known already: it tells which branch holds.
 */
export function wetBulb(t: number, w: number, pressure: number, dew = dewPoint(w, pressure)): number {
  let iced = t <= 0;
  // Between a frosty dew point and warm air either branch may hold; the bulb lies between the two.
  if (!iced && dew < 0) {
    iced = ratioAtBulb(t, 0, ratioOfPressure(atZero, pressure)) > w;
    if (iced && ratioAtBulb(t, -1e-9, ratioOfPressure(beneathZero, pressure)) <= w) return 0;
  }
  let low = iced ? -120 : 0;
  let high = iced ? Math.min(t, -1e-9) : t;
  const ground = Math.max(dew, -80);
  // As far from the air as its heat and the vapour's pull it: about 65 Pa/K against the slope of saturation.
  const pull = lookNear((t + ground) / 2) ? (near[1] ?? 0) / (6.5e-4 * pressure) : 0.5;
  let bulb = Math.max(low, Math.min(high, ground + (t - ground) / (1 + pull)));
  for (let i = 0; i < 3 && lookNear(bulb); i++) {
    const { miss, slope } = bulbMiss(t, bulb, pressure, w, iced, near[0] ?? 0, near[1] ?? 0);
    bulb = Math.max(low, Math.min(high, bulb - miss / slope));
    if (Math.abs(miss) < nearEnough * Math.abs(slope)) break;
  }
  for (let i = 0; i < 60; i++) {
    const vapour = saturationPressure(bulb);
    const { miss, slope } = bulbMiss(t, bulb, pressure, w, iced, vapour, vapour * saturationSlope(bulb));
    if (miss > 0) high = bulb;
    else low = bulb;
    const next = bulb - miss / slope;
    const moved = next >= low && next <= high ? next : (low + high) / 2;
    if (Math.abs(moved - bulb) < 1e-5) return moved;
    bulb = moved;
  }
  return bulb;
}

/** How far the humidity of a bulb misses the state's, and how fast that grows with the bulb; `vapour` saturated there, by K `rise`. */
function bulbMiss(
  t: number,
  bulb: number,
  pressure: number,
  w: number,
  iced: boolean,
  vapour: number,
  rise: number,
): { miss: number; slope: number } {
  const dry = 1 / (pressure - vapour);
  const ws = molarRatio * vapour * dry;
  const wsSlope = molarRatio * pressure * rise * dry * dry;
  const { heat, fall, liquid } = iced ? ice : water;
  const bottom = 1 / (heat + 1.86 * t - liquid * bulb);
  const ratio = ((heat - fall * bulb) * ws - 1.006 * (t - bulb)) * bottom;
  const topSlope = (heat - fall * bulb) * wsSlope - fall * ws + 1.006;
  return { miss: ratio - w, slope: (topSlope + liquid * ratio) * bottom };
}

/** Latent heat at 0 °C and its fall with the bulb, heat of the bulb's water or ice; kJ/kg and kJ/(kg K). */
const water = { heat: 2501, fall: 2.326, liquid: 4.186 } as const;
const ice = { heat: 2830, fall: 0.24, liquid: 2.1 } as const;

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
  const dew = 'dewPoint' in state ? state.dewPoint : dewPoint(w, pressure);
  return {
    t,
    w,
    vapourPressure,
    rh: 'rh' in state ? state.rh : vapourPressure / saturationPressure(t),
    dewPoint: dew,
    wetBulb: 'wetBulb' in state ? state.wetBulb : wetBulb(t, w, pressure, dew),
    enthalpy: enthalpy(t, w),
    volume: specificVolume(t, w, pressure),
  };
}
