import type { PowerRun } from '../power/runWay.ts';

/** A run by the hour: kW, °C, shares and K as means of the hour; what is stored, at its end. */
export type HourlyRun = {
  readonly hours: number;
  readonly heat: Float64Array;
  /** What cooling draws. */
  readonly cooling: Float64Array;
  readonly household: Float64Array;
  readonly heater: Float64Array;
  readonly sun: Float64Array;
  readonly room: Float64Array;
  readonly cold: Float64Array;
  readonly cell: Float64Array;
  readonly outdoor: Float64Array;
  /** Share of the battery at the hour's end. */
  readonly charge: Float64Array;
  readonly generator: Float64Array;
  readonly short: Float64Array;
};

const kilo = 1e-3;

/** The hours of a run whose steps are an hour or whole parts of one. */
export function hourlyRun({ record, sun, weather, hours: length }: PowerRun): HourlyRun {
  const per = Math.round(1 / length);
  const hours = Math.floor(sun.length / per);
  const mean = (x: Float64Array, scale = 1): Float64Array =>
    Float64Array.from({ length: hours }, (_, h) => {
      let sum = 0;
      for (let i = h * per; i < (h + 1) * per; i++) sum += x[i] ?? 0;
      return (sum / per) * scale;
    });
  return {
    hours,
    heat: mean(record.heat, kilo),
    cooling: mean(
      record.unit.map((x, i) => ((record.heat[i] ?? 0) > 0 ? 0 : x)),
      kilo,
    ),
    household: mean(record.household, kilo),
    heater: mean(record.heater, kilo),
    sun: mean(sun, kilo),
    room: mean(record.room),
    cold: mean(record.cold),
    cell: mean(record.cell),
    outdoor: mean(weather.steps.outdoor),
    charge: Float64Array.from({ length: hours }, (_, h) => record.charge[(h + 1) * per - 1] ?? 0),
    generator: mean(record.generator, kilo),
    short: mean(record.short, kilo),
  };
}
