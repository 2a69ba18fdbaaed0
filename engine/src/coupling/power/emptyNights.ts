import type { PowerRun } from './runWay.ts';

/** Nights on which a battery more than half full at dusk gives out before morning, without the generator; and the usual hour. */
export type EmptyNights = { readonly nights: number; readonly hour?: number };

const dusk = 18;
const morning = 9;
const half = 0.5;

/** Counts nights from six to nine; the hour is the middle one of all such nights, 0 to 24. */
export function emptyNights({ record, hours }: PowerRun): EmptyNights {
  const perDay = Math.round(24 / hours);
  const steps = Math.round((24 - dusk + morning) / hours);
  const gaveOut: number[] = [];
  for (let day = 0; (day + 2) * perDay <= record.charge.length; day++) {
    const from = day * perDay + Math.round(dusk / hours);
    if ((record.charge[from] ?? 0) < half) continue;
    for (let i = 0; i < steps; i++)
      if ((record.held[from + i] ?? 0) > 0 || (record.short[from + i] ?? 0) > 1) {
        gaveOut.push(i);
        break;
      }
  }
  const middle = gaveOut.sort((a, b) => a - b)[gaveOut.length >> 1];
  return { nights: gaveOut.length, ...(middle === undefined ? {} : { hour: (dusk + middle * hours) % 24 }) };
}
