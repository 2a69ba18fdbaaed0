import type { UnitRows } from '../../season/unitPower.ts';
import type { PowerRun } from '../runWay.ts';
import { steps } from './sizes.ts';

/** The days of the year on which the sun falls furthest short of what is drawn, as numbers from 0. */
export function worstDays({ record, sun, hours }: PowerRun): Set<number> {
  const perDay = Math.round(24 / hours);
  const gaps = Array.from({ length: Math.floor(sun.length / perDay) }, (_, day) => {
    let gap = 0;
    for (let i = day * perDay; i < (day + 1) * perDay; i++)
      gap += (record.unit[i] ?? 0) + (record.household[i] ?? 0) + (record.standing[i] ?? 0) - (sun[i] ?? 0);
    return { day, gap };
  });
  return new Set(
    gaps
      .sort((a, b) => b.gap - a.gap || a.day - b.day)
      .slice(0, steps.stoveDays)
      .map((x) => x.day),
  );
}

/** A unit that goes no faster than its lowest speed on such days, and leaves the rest to the fire. */
export function slowOn(days: ReadonlySet<number>, able: UnitRows): UnitRows {
  const perDay = able.heating.length / 365;
  return {
    ...able,
    heating: able.heating.map((moment, row) => (days.has(Math.floor(row / perDay)) ? moment.slice(0, 1) : moment)),
  };
}
