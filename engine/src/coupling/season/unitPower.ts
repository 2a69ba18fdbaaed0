import { type HeatingCorrections, usualCorrections } from '../../equipment/corrections.ts';
import type { UnitModel, UnitSpeed } from '../../equipment/result.ts';
import { readRows, rowsOf } from '../../equipment/sheet.ts';
import { altitudeFactor, heatingOf } from '../../equipment/unitAt.ts';

type Mode = 'heating' | 'cooling';

/** One continuous speed at one outdoor temperature: what it gives in all and draws, W. */
export type SpeedPoint = { readonly capacity: number; readonly power: number };

/** A unit at one outdoor temperature, its speeds rising. */
export type UnitMoment = readonly SpeedPoint[];

/** What a unit can do in each row of weather. */
export type UnitRows = {
  readonly heating: readonly UnitMoment[];
  readonly cooling: readonly UnitMoment[];
  /** Sensible W at its most in cooling. */
  readonly sensible: Float64Array;
  /** Rows colder than its sheet goes. */
  readonly beyond: Uint8Array;
};

const speeds: readonly UnitSpeed[] = ['least', 'rated', 'most'];

/** Loss while a unit starts and stops, as a share at the limit of no load. Source: `coupling.cycling`. */
const cyclingLoss = 0.25;

/**
 * What a unit gives and draws at an outdoor temperature, by speed. Outside its sheet it stands at the sheet's nearest
 * row: such hours are counted by whoever asks. Ends the enclosing attempt where it has no rows at its highest speed.
 */
export const unitMoment = (
  unit: UnitModel,
  mode: Mode,
  outdoor: number,
  pressure: number,
  corrections = usualCorrections(unit),
): UnitMoment => unitMoments(unit, mode, pressure, corrections)(outdoor);

/** The same for many outdoor temperatures: the sheet is put in order once. */
export function unitMoments(
  unit: UnitModel,
  mode: Mode,
  pressure: number,
  corrections: HeatingCorrections,
): (outdoor: number) => UnitMoment {
  const sheets = speeds
    .filter((speed) => speed === 'most' || unit.rows.some((r) => r.mode === mode && r.speed === speed))
    .map((speed) => rowsOf(unit, mode, speed));
  const thin = altitudeFactor(pressure, corrections.altitudeShare);
  return (outdoor) => {
    const points = sheets.map((rows): SpeedPoint => {
      const at = Math.max(rows[0]?.outdoor ?? 0, Math.min(rows.at(-1)?.outdoor ?? 0, outdoor));
      const found = readRows(rows, unit, at);
      if (mode === 'heating') return heatingOf(found, { outdoor: at, pressure }, corrections);
      return { capacity: found.capacity * thin, power: found.power };
    });
    // A speed that gives less than the one below it at this temperature is no speed of its own.
    return points.filter((p, i) => i === points.length - 1 || p.capacity < (points.at(-1)?.capacity ?? 0));
  };
}

/**
 * W drawn by the compressor for so many W of its heat or cold: along lines between its speeds, below the lowest by
 * stopping and starting.
 */
export function powerFor(unit: UnitMoment, wanted: number): number {
  const [lowest] = unit;
  const highest = unit.at(-1);
  if (!lowest || !highest || wanted <= 0) return 0;
  if (wanted < lowest.capacity) {
    const share = wanted / lowest.capacity;
    return (lowest.power * share) / (1 - cyclingLoss * (1 - share));
  }
  const above = unit.findIndex((p) => p.capacity >= wanted);
  if (above < 0) return highest.power;
  const [upper, lower] = [unit[above] ?? highest, unit[Math.max(0, above - 1)] ?? lowest];
  const span = upper.capacity - lower.capacity;
  return span > 0 ? lower.power + ((wanted - lower.capacity) / span) * (upper.power - lower.power) : upper.power;
}

/** The heat or cold that so many W can make: what `powerFor` undone gives, up to the unit's most. */
export function outputFor(unit: UnitMoment, watts: number): number {
  const [lowest] = unit;
  if (!lowest || watts <= 0) return 0;
  if (watts < lowest.power) {
    const run = watts / lowest.power;
    return (lowest.capacity * run * (1 - cyclingLoss)) / (1 - run * cyclingLoss);
  }
  let output = lowest.capacity;
  for (let i = 1; i < unit.length; i++) {
    const [lower, upper] = [unit[i - 1] ?? lowest, unit[i] ?? lowest];
    // A higher speed that drew less would be free heat: its sheet's own line is followed no further than it rises.
    if (watts >= upper.power) output = upper.capacity;
    else if (watts > lower.power)
      return lower.capacity + ((watts - lower.power) / (upper.power - lower.power)) * (upper.capacity - lower.capacity);
  }
  return output;
}
