import type { DayMeans } from '../../physics/fitting/index.ts';
import type { HouseLog } from './logHours.ts';

/** Days of a log that can be used: whole, the one before as well, heated for most of the day. */
export type LogDays = DayMeans & { readonly outdoor: Float64Array; readonly power?: Float64Array };

/** Hours of a day that must be known, and in which it must have been heated (above so many W). */
const hoursLeast = 20;
const heatedLeast = 16;
const heated = 20;

/** Days' means, in order. Days that hardly heated are left out: there the sun or the season did it, and the balance says nothing. */
export function logDays(log: HouseLog): LogDays {
  const offset = (24 - (log.first % 24)) % 24;
  const count = Math.max(0, Math.floor((log.heat.length - offset) / 24));
  const of = (x: Float64Array | undefined, d: number): number => (x ? meanOf(x, offset + 24 * d) : Number.NaN);
  const apart = Float64Array.from({ length: count }, (_, d) => of(log.indoor, d) - of(log.outdoor, d));
  const kept = Array.from({ length: count }, (_, d) => d).filter((d) => {
    const known = [
      apart[d],
      apart[d - 1],
      of(log.heat, d),
      log.sun ? of(log.sun, d) : 0,
      log.wind ? of(log.wind, d) : 0,
    ];
    return (
      known.every((x) => x !== undefined && !Number.isNaN(x)) && heatedHours(log.heat, offset + 24 * d) >= heatedLeast
    );
  });
  const pick = (value: (d: number) => number): Float64Array => Float64Array.from(kept, value);
  const end = (d: number): number => log.ends[offset + 24 * d - 1] ?? log.indoor[offset] ?? Number.NaN;
  const rise = pick((d) => end(d + 1) - end(d)).map((r) => (Number.isNaN(r) ? 0 : r));
  return {
    day: pick((d) => (log.first + offset) / 24 + d),
    heat: pick((d) => of(log.heat, d)),
    apart: pick((d) => apart[d] ?? Number.NaN),
    apartBefore: pick((d) => apart[d - 1] ?? Number.NaN),
    outdoor: pick((d) => of(log.outdoor, d)),
    rise,
    ...(log.sun ? { sun: pick((d) => of(log.sun, d)) } : {}),
    ...(log.wind ? { wind: pick((d) => of(log.wind, d)) } : {}),
    ...(log.power ? { power: pick((d) => of(log.power, d)) } : {}),
  };
}

/** Mean of a day's known hours; NaN where too few are known. */
function meanOf(x: Float64Array, from: number): number {
  let sum = 0;
  let known = 0;
  for (let h = from; h < from + 24; h++) {
    const v = x[h] ?? Number.NaN;
    if (Number.isNaN(v)) continue;
    sum += v;
    known++;
  }
  return known >= hoursLeast ? sum / known : Number.NaN;
}

function heatedHours(heat: Float64Array, from: number): number {
  let hours = 0;
  for (let h = from; h < from + 24; h++) if ((heat[h] ?? 0) > heated) hours++;
  return hours;
}
