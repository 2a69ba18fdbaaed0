import { copyState } from '../../physics/building/index.ts';
import { startPower } from '../../physics/power/index.ts';
import { emptyRecord } from './emptyRecord.ts';
import { type PowerLoop, type PowerRecord, runTogether } from './powerLoop.kernel.ts';
import type { PowerWay } from './runWay.ts';

/** Power gone at a step from a full battery, in a house that had all it wanted until then; the steps after it. */
export type OutageCourse = {
  readonly held: readonly number[];
  readonly room: readonly number[];
  readonly hours: number;
};

export type Outages = {
  readonly outage: (from: number, length: number) => OutageCourse;
  /** The same on every day of the year, from one hour of it on, followed for so many steps: hours until power first holds the heat back. */
  readonly dailyOutages: (fromHour: number, length: number) => readonly number[];
};

type Of = {
  readonly fresh: (way: PowerWay) => PowerLoop;
  readonly steps: { readonly count: number; readonly stepSeconds: number };
  readonly perDay: number;
  /** Days before an outage that settle walls. */
  readonly settling: number;
  /** °C of the cells at a step at which power goes. */
  readonly warmth: (at: number) => number;
};

/** Outages of a house whose grid gives all it wants until then. */
export function outagesFrom({ fresh, steps, perDay, settling, warmth }: Of): Outages {
  const hours = steps.stepSeconds / 3600;
  const settled = (at: number): PowerLoop => {
    const grid = fresh('unlimited');
    runTogether(grid, at - settling * perDay + steps.count, settling * perDay);
    return grid;
  };
  /** From here on on the battery alone, in a loop of its own. */
  const cut = (grid: PowerLoop, at: number, length: number, record: PowerRecord): void => {
    const gone = fresh('with-generator');
    copyState(grid.state, gone.state);
    runTogether({ ...gone, power: startPower(gone.system, 1, warmth(at)) }, at, length, record);
  };
  const outage = (at: number, length: number): OutageCourse => {
    const record = emptyRecord(steps.count);
    cut(settled(at), at, length, record);
    const taken = (x: ArrayLike<number>): number[] => Array.from({ length }, (_, i) => x[(at + i) % steps.count] ?? 0);
    return { held: taken(record.held), room: taken(record.room), hours };
  };
  const dailyOutages = (fromHour: number, length: number): number[] => {
    const start = Math.round((fromHour * perDay) / 24);
    const grid = settled(start);
    const record = emptyRecord(steps.count);
    return Array.from({ length: steps.count / perDay }, (_, day) => {
      const at = start + day * perDay;
      cut(grid, at, length, record);
      runTogether(grid, at, perDay);
      for (let i = 0; i < length; i++) if (record.held[(at + i) % steps.count] === 1) return i * hours;
      return length * hours;
    });
  };
  return { outage, dailyOutages };
}
