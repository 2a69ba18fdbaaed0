import { cellExponential, type Mounting } from './cellTemperature.ts';
import { incidenceDiffuse, incidenceExponential } from './incidence.ts';
import { modulePower, rowShade } from './modulePower.ts';

/** An array as its power needs it: W, shares, degrees, m. */
export type PanelArray = {
  readonly rated: number;
  readonly perKelvin: number;
  readonly tilt: number;
  readonly azimuth: number;
  readonly mounting: Mounting;
  /** Share lost to dirt, wiring, mismatch and the charge controller together. */
  readonly lost: number;
  readonly rows?: { readonly count: number; readonly pitch: number; readonly slant: number };
};

/** Light on its plane by step, W/m², the cosine of the sun's angle, where the sun stands, and the air. */
export type ArrayLight = {
  readonly direct: ArrayLike<number>;
  readonly sky: ArrayLike<number>;
  readonly ground: ArrayLike<number>;
  readonly cosine: ArrayLike<number>;
  /** The sun's direction as a unit vector; 0 up while it is down. */
  readonly east: ArrayLike<number>;
  readonly north: ArrayLike<number>;
  readonly up: ArrayLike<number>;
  readonly air: ArrayLike<number>;
  /** m/s by step. */
  readonly wind: (step: number) => number;
  /** Share of the light that snow keeps off, by step. */
  readonly snow: (step: number) => number;
};

/** Constant of clean glass in the exponential form. Source: `power.incidence`. */
export const glassConstant = 0.16;

/** Adds an array's W at the bus to a year of steps. Source: `power.module`, `power.cell-exponential`, `power.incidence`. */
export function addArray(out: Float64Array, array: PanelArray, light: ArrayLight): void {
  const even = incidenceDiffuse(array.tilt, glassConstant);
  for (let i = 0; i < out.length; i++) {
    const direct = (light.direct[i] ?? 0) * (1 - shadeAt(array, light, i));
    const diffuse = (light.sky[i] ?? 0) + (light.ground[i] ?? 0);
    if (direct + diffuse <= 0) continue;
    const open = 1 - light.snow(i);
    const entered =
      open *
      (direct * incidenceExponential(light.cosine[i] ?? 0, glassConstant) +
        (light.sky[i] ?? 0) * even.sky +
        (light.ground[i] ?? 0) * even.ground);
    const weather = { light: open * (direct + diffuse), air: light.air[i] ?? 0, wind: light.wind(i) };
    const watts = modulePower(entered, cellExponential(weather, array.mounting), array);
    out[i] = (out[i] ?? 0) + Math.max(0, watts) * (1 - array.lost);
  }
}

/** Share of the array that its own rows shade: all rows but the first. */
function shadeAt({ rows, tilt, azimuth }: PanelArray, light: ArrayLight, i: number): number {
  const up = light.up[i] ?? 0;
  if (!rows || rows.count < 2 || up <= 0) return 0;
  const rad = Math.PI / 180;
  const across = (light.east[i] ?? 0) * Math.sin(azimuth * rad) + (light.north[i] ?? 0) * Math.cos(azimuth * rad);
  const height = Math.atan2(up, across) / rad;
  return (rowShade(rows.pitch, rows.slant, tilt, height) * (rows.count - 1)) / rows.count;
}
