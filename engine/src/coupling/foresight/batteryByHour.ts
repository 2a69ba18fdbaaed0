import type { Dispatch } from '../../physics/dispatch/index.ts';
import { degreeOf, type PowerSystem } from '../../physics/power/index.ts';
import type { PowerRun } from '../power/runWay.ts';

/** Hours before, the warmest of which says how deep a battery may be drawn: it may have been drawn then. */
const lookBack = 72;

/**
 * A battery's limits by the hour, its cells as warm as in a run: what it takes and gives at most, and the floor that the
 * cold leaves. The floor is never above what the run itself held.
 */
export function batteryByHour({ battery }: PowerSystem, { record, hours: length }: PowerRun): Dispatch['battery'] {
  const per = Math.round(1 / length);
  const hours = Math.floor(record.cell.length / per);
  const over = (table: Float64Array): Float64Array =>
    Float64Array.from({ length: hours }, (_, h) => {
      let sum = 0;
      // A step goes by the cells before it; the better of before and after is taken.
      for (let i = h * per; i < (h + 1) * per; i++)
        sum += Math.max(at(table, record.cell[Math.max(0, i - 1)]), at(table, record.cell[i]));
      return (sum * length) / 1000;
    });
  const stands = Float64Array.from({ length: hours }, (_, h) => {
    const share = at(battery.capacity, record.cell[(h + 1) * per - 1]);
    return battery.energy * (1 - share * (1 - battery.kept));
  });
  const held = Float64Array.from({ length: hours }, (_, h) => (record.charge[(h + 1) * per - 1] ?? 0) * battery.energy);
  const ends = [record.charge[0] ?? 0, record.charge.at(-1) ?? 0].map((share) => share * battery.energy);
  return {
    energy: battery.energy,
    floor: stands.map((_, h) => Math.min(held[h] ?? 0, least(stands, h - lookBack, h))),
    start: Math.max(...ends),
    end: Math.min(...ends),
    keptIn: battery.oneWay,
    keptOut: battery.oneWay,
    charge: over(battery.charge),
    discharge: over(battery.discharge),
  };
}

const at = (table: Float64Array, cell: number | undefined): number => table[degreeOf(cell ?? 0)] ?? 0;

const least = (x: Float64Array, from: number, to: number): number =>
  x.subarray(Math.max(0, from), to + 1).reduce((a, b) => Math.min(a, b), Number.MAX_VALUE);
