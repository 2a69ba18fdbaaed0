import { enthalpy, saturationRatio } from '../../physics/air/index.ts';

/** Air at a coil: °C, and kg of water to a kg of dry air. */
export type AirState = { readonly t: number; readonly w: number };

const along = (a: AirState, b: AirState, x: number): AirState => ({
  t: a.t + x * (b.t - a.t),
  w: a.w + x * (b.w - a.w),
});

/** How far beyond leaving air the surface is looked for, in strides from entering to leaving, and how finely. */
const reach = 3;
const strides = 100;

/**
 * Apparatus dew point, °C: where the line from entering to leaving air first meets saturation; Pa. NaN where leaving
 * air is already beyond saturation, or the line never meets it: no coil gives such air. Source: `equipment.coil`.
 */
export function apparatusDewPoint(entering: AirState, leaving: AirState, pressure: number): number {
  const over = (x: number): number => {
    const air = along(entering, leaving, x);
    return air.w - saturationRatio(air.t, pressure);
  };
  if (over(1) > 0) return Number.NaN;
  let high = 1;
  for (let i = 1; i <= strides && over(high) < 0; i++) high = 1 + ((reach - 1) * i) / strides;
  if (over(high) < 0) return Number.NaN;
  let low = Math.max(1, high - (reach - 1) / strides);
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (over(middle) < 0) low = middle;
    else high = middle;
  }
  return along(entering, leaving, low).t;
}

/** Share of the air that passes a coil as if untouched. °C. */
export const bypassFactor = (entering: number, leaving: number, surface: number): number =>
  (leaving - surface) / (entering - surface);

/** Number of transfer units of a bypass factor, and back: ln(BF) = -NTU. */
export const transferUnits = (bypass: number): number => -Math.log(bypass);

/** Bypass factor at a flow of dry air, kg/s, for a coil whose NTU times flow, kg/s, stays the same. */
export const bypassAt = (conductance: number, massFlow: number): number => Math.exp(-conductance / massFlow);

/** Air behind a coil with its surface at a temperature, °C; a surface above the entering dew point takes no water. */
export function leavingAir(entering: AirState, surface: number, bypass: number, pressure: number): AirState {
  const w = Math.min(entering.w, saturationRatio(surface, pressure));
  return along({ t: surface, w }, entering, bypass);
}

/** Sensible and latent heat given up by air, W for a flow of dry air in kg/s; the water leaves first, at the entering temperature. */
export function heatGivenUp(
  entering: AirState,
  leaving: AirState,
  massFlow: number,
): { readonly sensible: number; readonly latent: number } {
  const between = enthalpy(entering.t, leaving.w);
  return {
    sensible: massFlow * 1000 * (between - enthalpy(leaving.t, leaving.w)),
    latent: massFlow * 1000 * (enthalpy(entering.t, entering.w) - between),
  };
}
