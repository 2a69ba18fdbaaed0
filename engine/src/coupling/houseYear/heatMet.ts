import type { YearRun } from './run.ts';

/** K and share of the peak within which hours are counted together; each cell keeps its own means. */
const widthOutdoor = 2;
const cellsToPeak = 24;

/**
 * The year's hours by outdoor temperature and by heat needed: cells so narrow that a unit's year can be summed over
 * them instead of over 8760 hours. Hours without heat are left out; heat and hours sum to the year's.
 */
export function heatMet(run: YearRun, heating: Float64Array): HeatMet[] {
  const perHour = Math.max(1, Math.round(3600 / run.rowSeconds));
  const hours = Math.floor(run.rows / perHour);
  const mean = (x: Float64Array, hour: number): number => {
    let sum = 0;
    for (let i = 0; i < perHour; i++) sum += x[hour * perHour + i] ?? 0;
    return sum / perHour;
  };
  const loads = Float64Array.from({ length: hours }, (_, hour) => mean(heating, hour));
  const step = loads.reduce((a, b) => Math.max(a, b), 0) / cellsToPeak;
  const cells = new Map<number, { hours: number; outdoor: number; load: number }>();
  loads.forEach((load, hour) => {
    if (load <= 0) return;
    const outdoor = mean(run.outdoor, hour);
    const key = Math.floor(outdoor / widthOutdoor) * (cellsToPeak + 1) + Math.floor(load / step);
    const cell = cells.get(key) ?? { hours: 0, outdoor: 0, load: 0 };
    cells.set(key, { hours: cell.hours + 1, outdoor: cell.outdoor + outdoor, load: cell.load + load });
  });
  const length = (perHour * run.rowSeconds) / 3600;
  return [...cells]
    .sort(([a], [b]) => a - b)
    .map(([, c]) => ({ outdoor: c.outdoor / c.hours, load: c.load / c.hours, hours: c.hours * length }));
}

/** Hours in which a house needs about so much heat, W, at about such outdoor air, °C. */
export type HeatMet = { readonly outdoor: number; readonly load: number; readonly hours: number };
