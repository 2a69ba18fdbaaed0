import { newYear } from '../calendar.ts';
import { rad } from '../exact.ts';
import {
  airMass,
  extraterrestrialNormal,
  type KeptSun,
  keptColumn,
  refraction,
  skyBrightness,
  solarConstant,
  sunLevel,
  sunPosition,
} from '../sun/index.ts';

/** Weather in equal rows from midnight local standard time: °C, kg/kg, m/s, W/m². */
export type WeatherRows = {
  readonly rowSeconds: number;
  /** Day of the year on which the rows begin, 0 for 1 January. */
  readonly firstDay: number;
  readonly latitude: number;
  readonly longitude: number;
  /** Hours from Greenwich. */
  readonly timeZone: number;
  /** Pa */
  readonly pressure: number;
  /** Seconds from the beginning of a row to the middle of the time its sun is the mean of, and to the moment of its air. */
  readonly sunOffset: number;
  readonly airOffset: number;
  readonly dryBulb: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly windSpeed: Float64Array;
  readonly sky: Float64Array;
  readonly dni: Float64Array;
  readonly dhi: Float64Array;
  /** Height of what stands round the place, degrees above the level, by compass direction; empty for an open place. */
  readonly horizon: readonly { readonly azimuth: number; readonly height: number }[];
};

/** The sun by step: its direction, and its light. Nothing while it is down. */
export type SunSteps = {
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
  /** W/m² to the sun, and from round the sun counted with it; from the rest of the sky as if it were even; along the horizon. */
  readonly beam: Float64Array;
  readonly even: Float64Array;
  readonly band: Float64Array;
  /** All on the level. */
  readonly level: Float64Array;
};

/** Weather for equal steps within the rows. Air is read off between the rows, sun is spread over a row by where it stands. */
export type WeatherSteps = {
  readonly stepSeconds: number;
  readonly perRow: number;
  readonly count: number;
  readonly pressure: number;
  readonly outdoor: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly sky: Float64Array;
  /** By row. */
  readonly wind: Float64Array;
  readonly sun: SunSteps;
};

/**
 * Lays weather out for steps that divide a row evenly. The year closes on itself: after the last row comes the first.
 * Throws a RangeError where the step does not divide the row. `kept` saves working out where the sun stands again.
 */
export function weatherSteps(rows: WeatherRows, stepSeconds: number, kept: KeptSun = new Map()): WeatherSteps {
  const perRow = rows.rowSeconds / stepSeconds;
  if (!Number.isInteger(perRow)) throw new RangeError('the step has to divide a row of weather evenly');
  return {
    stepSeconds,
    perRow,
    count: rows.dryBulb.length * perRow,
    pressure: rows.pressure,
    outdoor: between(rows.dryBulb, perRow, rows.airOffset / rows.rowSeconds),
    humidityRatio: between(rows.humidityRatio, perRow, rows.airOffset / rows.rowSeconds),
    sky: between(rows.sky, perRow, rows.airOffset / rows.rowSeconds),
    wind: rows.windSpeed,
    sun: sunSteps(rows, perRow, placesFor(rows, perRow, kept)),
  };
}

/** Values in the middle of each step on straight lines between the rows, which hold at `offset` rows after their beginning. */
function between(x: Float64Array, perRow: number, offset: number): Float64Array {
  const n = x.length;
  return Float64Array.from({ length: n * perRow }, (_, step) => {
    const at = (step + 0.5) / perRow - offset;
    const low = Math.floor(at);
    const a = x[(low + n) % n] ?? 0;
    const b = x[(low + 1 + n) % n] ?? 0;
    return a + (b - a) * (at - low);
  });
}

/** Degrees at which the sun stands by step; not a number until somebody asks. */
type SunPlaces = { readonly zenith: Float64Array; readonly azimuth: Float64Array };

function placesFor(rows: WeatherRows, perRow: number, kept: KeptSun): SunPlaces {
  const { rowSeconds, firstDay, latitude, longitude, timeZone, pressure, sunOffset, dni } = rows;
  const count = dni.length * perRow;
  const of = [count, perRow, rowSeconds, firstDay, latitude, longitude, timeZone, pressure, sunOffset].join(' ');
  const unasked = (): Float64Array => new Float64Array(count).fill(Number.NaN);
  return { zenith: keptColumn(kept, `zenith ${of}`, unasked), azimuth: keptColumn(kept, `azimuth ${of}`, unasked) };
}

function sunSteps(rows: WeatherRows, perRow: number, places: SunPlaces): SunSteps {
  const count = rows.dni.length * perRow;
  const made = (): Float64Array => new Float64Array(count);
  const sun = { east: made(), north: made(), up: made(), beam: made(), even: made(), band: made(), level: made() };
  for (let row = 0; row < rows.dni.length; row++) {
    const [dni, dhi] = [rows.dni[row] ?? 0, rows.dhi[row] ?? 0];
    if (dni <= 0 && dhi <= 0) continue;
    placeRow(rows, perRow, row, places);
    lightOfRow(rows, perRow, row, { dni: Math.max(0, dni), dhi: Math.max(0, dhi) }, sun, places);
  }
  return sun;
}

/** A row's direct light falls while the sun is up, so that the row keeps its mean; sky light falls all through it. */
function lightOfRow(
  rows: WeatherRows,
  perRow: number,
  row: number,
  light: { readonly dni: number; readonly dhi: number },
  sun: SunSteps,
  places: SunPlaces,
): void {
  let ups = 0;
  for (let j = 0; j < perRow; j++) if ((places.zenith[row * perRow + j] ?? 90) < 90) ups++;
  const extraterrestrial = extraterrestrialNormal(
    rows.firstDay + Math.floor((row * rows.rowSeconds) / 86_400) + 1,
    solarConstant,
  );
  for (let step = row * perRow; step < (row + 1) * perRow; step++) {
    const zenith = places.zenith[step] ?? 90;
    const azimuth = places.azimuth[step] ?? 0;
    const up = zenith < 90 ? Math.cos(zenith * rad) : 0;
    sun.east[step] = Math.sin(zenith * rad) * Math.sin(azimuth * rad);
    sun.north[step] = Math.sin(zenith * rad) * Math.cos(azimuth * rad);
    sun.up[step] = up;
    const seen = up > 0 && 90 - zenith >= horizonAt(rows.horizon, azimuth);
    const normal = up > 0 ? (light.dni * perRow) / ups : 0;
    const bright =
      up > 0
        ? skyBrightness(zenith, { beamNormal: normal, diffuse: light.dhi }, airMass(zenith), extraterrestrial)
        : { roundSun: 0, horizon: 0 };
    const roundSun = (light.dhi * bright.roundSun) / sunLevel(up);
    sun.beam[step] = seen ? normal + roundSun : 0;
    sun.even[step] = light.dhi * (1 - bright.roundSun);
    sun.band[step] = light.dhi * bright.horizon;
    sun.level[step] = (seen ? normal * up : 0) + light.dhi;
  }
}

/** Finds where the sun stands in the steps of a row, where nobody has yet. */
function placeRow(rows: WeatherRows, perRow: number, row: number, { zenith, azimuth }: SunPlaces): void {
  if (!Number.isNaN(zenith[row * perRow])) return;
  for (let j = 0; j < perRow; j++) {
    const place = placeOfSun(rows, perRow, row, j);
    zenith[row * perRow + j] = place.zenith;
    azimuth[row * perRow + j] = place.azimuth;
  }
}

/** Apparent place in the middle of a step. */
function placeOfSun(rows: WeatherRows, perRow: number, row: number, j: number): { zenith: number; azimuth: number } {
  const local = (row + (j + 0.5) / perRow - 0.5) * rows.rowSeconds + rows.sunOffset;
  const time = newYear + rows.firstDay * 86_400 + local - rows.timeZone * 3600;
  const at = sunPosition({ time, latitude: rows.latitude, longitude: rows.longitude });
  return { zenith: at.zenith - refraction(at.zenith, rows.pressure, 10), azimuth: at.azimuth };
}

/** Degrees that the surroundings hide at a compass direction, on straight lines between the given directions. */
export function horizonAt(horizon: WeatherRows['horizon'], azimuth: number): number {
  if (horizon.length === 0) return 0;
  const sorted = [...horizon].sort((a, b) => a.azimuth - b.azimuth);
  const next = sorted.findIndex((h) => h.azimuth >= azimuth);
  const after = sorted[Math.max(next, 0)] ?? { azimuth: 0, height: 0 };
  const before = sorted.at((next < 0 ? sorted.length : next) - 1) ?? after;
  const span = (after.azimuth - before.azimuth + 360) % 360;
  const share = span === 0 ? 0 : ((azimuth - before.azimuth + 360) % 360) / span;
  return before.height + (after.height - before.height) * share;
}
