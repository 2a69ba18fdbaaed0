import type { HouseInputs } from '../../loads/dynamic/houseInputs.ts';
import { pressureOfRatio, saturationPressure } from '../../physics/air/index.ts';
import { daysInMonth, monthOfDay } from '../../physics/calendar.ts';
import type { HeatMet } from './heatMet.ts';
import { heatMet } from './heatMet.ts';
import type { YearRun } from './run.ts';
import { dayShares, type Frosts, frostsOf, hourlyMeans } from './spaces.ts';

/** Twelve monthly mean days of 24 hours. */
export type DayCurves = readonly (readonly number[])[];

/** What a year in this house comes to. Energy in kWh, peaks in W as hourly means. */
export type HouseYear = {
  readonly heating: {
    readonly energy: number;
    readonly peak: number;
    readonly months: readonly number[];
    /** What a heat pump meets, by outdoor temperature and heat needed. */
    readonly met: readonly HeatMet[];
  };
  readonly cooling: {
    readonly sensible: number;
    readonly latent: number;
    readonly peak: number;
    readonly months: readonly number[];
    /** Latent heat by month, kWh, and its largest hourly mean, W: the water that a coil takes out. */
    readonly latentMonths: readonly number[];
    readonly latentPeak: number;
  };
  readonly rooms: Readonly<Record<string, { readonly heating: number; readonly cooling: number }>>;
  /** °C: mean days of each month, where the house has such a space. */
  readonly attic?: DayCurves;
  readonly below?: DayCurves;
  readonly outdoor: DayCurves;
  readonly atticMost?: number;
  /** Hours in which the attic is above 40 °C. */
  readonly atticHotHours?: number;
  /** By month and hour: °C that nine days of ten stay below in the attic, and kg/kg of its air in the mean. */
  readonly atticWork?: { readonly temperature: DayCurves; readonly humidity: DayCurves };
  /** How the attic, the space below and the air outdoors freeze. */
  readonly frosts: {
    readonly attic?: Frosts;
    readonly below?: Frosts;
    readonly outdoor: Frosts;
  };
  /** The house left to itself: hours in which its rooms' mean lies below and above what is wanted, by more than 1 K. */
  readonly alone: {
    readonly cold: number;
    readonly hot: number;
    readonly lowest: number;
    readonly highest: number;
  };
  /** Relative humidity of the rooms, mean by month; hours above 0.7 and, in the heating season, below 0.3. */
  readonly humidity: { readonly months: readonly number[]; readonly dampHours: number; readonly dryHours: number };
};

const atticHot = 40;
/** Of a month's days, those that an hour's temperature for planning work stays below. */
const nineOfTen = 0.9;
const damp = 0.7;
const dry = 0.3;
const comfort = 1;

/** Reads the answers off the loaded and the free run of the same house and weather. */
export function yearAnswers(inputs: HouseInputs, loaded: YearRun, free: YearRun): HouseYear {
  const { record, rooms, zones, rows } = loaded;
  const kilowattHours = loaded.rowSeconds / 3.6e6;
  const rowTotal = (x: Float64Array, row: number, n: number): number => {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += x[row * n + k] ?? 0;
    return sum;
  };
  const total = (x: Float64Array, n: number): Float64Array =>
    Float64Array.from({ length: rows }, (_, row) => rowTotal(x, row, n));
  const heating = total(record.heating, rooms.length);
  const cooling = total(record.cooling, rooms.length);
  const latent = total(record.latent, zones.length);
  const curves = (zone: string): DayCurves | undefined => {
    const k = zones.indexOf(zone);
    return k < 0 ? undefined : dayCurves((row) => record.temperature[row * zones.length + k] ?? 0, loaded);
  };
  const attic = curves('attic');
  const below = curves('below');
  const hours = (zone: string, of: Float64Array = record.temperature): Float64Array => {
    const k = zones.indexOf(zone);
    return hourlyMeans((row) => of[row * zones.length + k] ?? 0, rows, loaded.rowSeconds);
  };
  const k = zones.indexOf('attic');
  const atticRows = Float64Array.from({ length: rows }, (_, row) => record.temperature[row * zones.length + k] ?? 0);
  const atticDamp = (row: number): number => record.humidity[row * zones.length + k] ?? 0;
  return {
    heating: {
      energy: sum(heating) * kilowattHours,
      peak: hourlyPeak(heating, loaded),
      months: byMonth(heating, loaded),
      met: heatMet(loaded, heating),
    },
    cooling: {
      sensible: sum(cooling) * kilowattHours,
      latent: sum(latent) * kilowattHours,
      peak: hourlyPeak(cooling, loaded),
      months: byMonth(cooling, loaded),
      latentMonths: byMonth(latent, loaded),
      latentPeak: hourlyPeak(latent, loaded),
    },
    rooms: Object.fromEntries(
      rooms.map((id, j) => [
        id,
        {
          heating: columnSum(record.heating, rooms.length, j) * kilowattHours,
          cooling: columnSum(record.cooling, rooms.length, j) * kilowattHours,
        },
      ]),
    ),
    outdoor: dayCurves((row) => loaded.outdoor[row] ?? 0, loaded),
    ...(below ? { below } : {}),
    ...(attic
      ? {
          attic,
          atticMost: atticRows.reduce((a, b) => Math.max(a, b), -1e9),
          atticHotHours: (atticRows.filter((t) => t > atticHot).length * loaded.rowSeconds) / 3600,
          atticWork: { temperature: dayShares(hours('attic'), nineOfTen), humidity: dayCurves(atticDamp, loaded) },
        }
      : {}),
    frosts: {
      ...(attic ? { attic: frostsOf(hours('attic')) } : {}),
      ...(below ? { below: frostsOf(hours('below')) } : {}),
      outdoor: frostsOf(hourlyMeans((row) => loaded.outdoor[row] ?? 0, rows, loaded.rowSeconds)),
    },
    alone: leftAlone(inputs, free),
    humidity: humidityOf(inputs, loaded),
  };
}

const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0);

function columnSum(x: Float64Array, of: number, k: number): number {
  let total = 0;
  for (let i = k; i < x.length; i += of) total += x[i] ?? 0;
  return total;
}

/** The largest mean of a whole hour. */
function hourlyPeak(x: Float64Array, run: YearRun): number {
  const perHour = Math.max(1, Math.round(3600 / run.rowSeconds));
  let most = 0;
  for (let i = 0; i + perHour <= x.length; i += perHour) {
    let hour = 0;
    for (let j = 0; j < perHour; j++) hour += (x[i + j] ?? 0) / perHour;
    most = Math.max(most, hour);
  }
  return most;
}

const monthOf = (row: number, run: YearRun): number => monthOfDay(Math.floor((row * run.rowSeconds) / 86_400));

/** kWh by month. */
function byMonth(x: Float64Array, run: YearRun): number[] {
  const months = daysInMonth.map(() => 0);
  x.forEach((watts, row) => {
    const m = monthOf(row, run);
    months[m] = (months[m] ?? 0) + (watts * run.rowSeconds) / 3.6e6;
  });
  return months;
}

function dayCurves(at: (row: number) => number, run: YearRun): DayCurves {
  const perHour = 3600 / run.rowSeconds;
  const sums = daysInMonth.map(() => new Float64Array(24));
  for (let row = 0; row < run.rows; row++) {
    const hour = Math.floor(row / perHour) % 24;
    const month = sums[monthOf(row, run)];
    if (month) month[hour] = (month[hour] ?? 0) + at(row) / perHour;
  }
  return sums.map((hours, m) => [...hours].map((t) => t / (daysInMonth[m] ?? 30)));
}

/** The rooms' mean temperature by floor area, row by row. */
function roomMean(inputs: HouseInputs, run: YearRun, column: Float64Array): Float64Array {
  const area = inputs.shell.rooms.reduce((a, r) => a + r.floorArea, 0);
  const shares = inputs.shell.rooms.map((r) => ({ k: run.zones.indexOf(r.id), share: r.floorArea / area }));
  return Float64Array.from({ length: run.rows }, (_, row) =>
    shares.reduce((a, { k, share }) => a + share * (column[row * run.zones.length + k] ?? 0), 0),
  );
}

function leftAlone(inputs: HouseInputs, free: YearRun): HouseYear['alone'] {
  const t = roomMean(inputs, free, free.record.temperature);
  const hours = (of: (x: number) => boolean): number => (t.filter(of).length * free.rowSeconds) / 3600;
  return {
    cold: hours((x) => x < inputs.wanted.heating - comfort),
    hot: hours((x) => x > inputs.wanted.cooling + comfort),
    lowest: t.reduce((a, b) => Math.min(a, b), 1e9),
    highest: t.reduce((a, b) => Math.max(a, b), -1e9),
  };
}

function humidityOf(inputs: HouseInputs, run: YearRun): HouseYear['humidity'] {
  const t = roomMean(inputs, run, run.record.temperature);
  const w = roomMean(inputs, run, run.record.humidity);
  const rh = t.map((x, i) => pressureOfRatio(w[i] ?? 0, inputs.pressure) / saturationPressure(x));
  const hours = (of: (x: number) => boolean): number => (rh.filter(of).length * run.rowSeconds) / 3600;
  const months = daysInMonth.map((days) => ({ days, sum: 0 }));
  rh.forEach((x, row) => {
    const m = months[monthOf(row, run)];
    if (m) m.sum += x;
  });
  return {
    months: months.map((m) => (m.sum * run.rowSeconds) / (m.days * 86_400)),
    dampHours: hours((x) => x > damp),
    dryHours: hours((x) => x < dry),
  };
}
