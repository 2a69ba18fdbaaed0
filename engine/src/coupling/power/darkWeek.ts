import type { PowerRun } from './runWay.ts';

/** A week hour by hour: W, but `charge` is a share, `cell`, `outdoor` and `room` °C. */
export type DarkWeek = {
  /** Day of the year on which it begins, 0 for 1 January. */
  readonly firstDay: number;
  readonly load: readonly number[];
  readonly sun: readonly number[];
  readonly generator: readonly number[];
  readonly charge: readonly number[];
  readonly cell: readonly number[];
  readonly outdoor: readonly number[];
  readonly room: readonly number[];
  /** Share of each hour in which power holds the heat back. */
  readonly held: readonly number[];
};

const days = 7;

/** The seven days in which the sun falls furthest short of what the house would draw. */
export function darkWeek(run: PowerRun, unlimited: PowerRun): DarkWeek {
  const perDay = Math.round(24 / run.hours);
  const all = Math.floor(run.sun.length / perDay);
  const gaps = Array.from({ length: all }, (_, day) => {
    let gap = 0;
    for (let i = day * perDay; i < (day + 1) * perDay; i++) gap += loadAt(unlimited, i) - (run.sun[i] ?? 0);
    return gap;
  });
  const gapFrom = (day: number): number => gaps.slice(day, day + days).reduce((a, b) => a + b, 0);
  let first = 0;
  for (let day = 1; day + days <= all; day++) if (gapFrom(day) > gapFrom(first)) first = day;
  const hourly = (at: (step: number) => number): number[] =>
    Array.from({ length: days * 24 }, (_, hour) => {
      const per = Math.round(1 / run.hours);
      const from = first * perDay + hour * per;
      let sum = 0;
      for (let i = from; i < from + per; i++) sum += at(i);
      return sum / per;
    });
  const { record, weather } = run;
  return {
    firstDay: first,
    load: hourly((i) => loadAt(run, i) - (record.short[i] ?? 0)),
    sun: hourly((i) => run.sun[i] ?? 0),
    generator: hourly((i) => record.generator[i] ?? 0),
    charge: hourly((i) => record.charge[i] ?? 0),
    cell: hourly((i) => record.cell[i] ?? 0),
    outdoor: hourly((i) => weather.steps.outdoor[i] ?? 0),
    room: hourly((i) => record.room[i] ?? 0),
    held: hourly((i) => record.held[i] ?? 0),
  };
}

const loadAt = ({ record }: PowerRun, i: number): number =>
  (record.unit[i] ?? 0) + (record.household[i] ?? 0) + (record.standing[i] ?? 0);
