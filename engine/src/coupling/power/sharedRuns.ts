import { copyState } from '../../physics/building/index.ts';
import { powerSlots } from '../../physics/power/index.ts';
import { emptyRecord } from './emptyRecord.ts';
import { type PowerLoop, type PowerRecord, runTogether } from './powerLoop.kernel.ts';
import type { PowerRun, PowerRuns, PowerWay, RunWith } from './runWay.ts';

/** The days that are run: `settling` of them before the first that counts, which begins at step `from`. */
export type Days = { readonly from: number; readonly days: number; readonly perDay: number; readonly settling: number };

/**
 * How long a house on its power went as it would with all the power it wants: up to the beginning of a day, counted from
 * the first that is recorded. The loop stands as it stood then.
 */
type Together = { day: number; readonly loop: PowerLoop; readonly record: PowerRecord };

type Fresh = (way: PowerWay, given: RunWith) => PowerLoop;

/**
 * Runs that share what they have in common, to the bit: as long as power holds nothing back and no stove burns, the house
 * goes as it does with all the power it wants. Asked for after the run as it is set up, that run begins where they part.
 */
export function sharedRuns(fresh: Fresh, of: Days, made: (record: PowerRecord) => PowerRun): PowerRuns {
  let together: Together | undefined;
  return (way, tell, given = {}) => {
    const plain = !given.raised && !given.rule && !given.settled;
    const loop = fresh(way, given);
    const record = emptyRecord(loop.weather.count);
    const before = plain && way === 'unlimited' ? together : undefined;
    const kept = plain && way === 'with-generator' ? { day: 0, loop: fresh(way, given), record } : undefined;
    if (before) takeOver(before, loop, record, of);
    const keep = (day: number): void => {
      if (kept && loop.parted[0] === 0) keepState(kept, loop, day);
    };
    for (let day = before?.day ?? -of.settling; day < of.days; day++) {
      keep(day);
      const start = loop.weather.count + of.from + day * of.perDay;
      runTogether(loop, start, of.perDay, day < 0 ? given.settled : record);
      if (day >= 0) tell((day + 1) * of.perDay);
    }
    keep(of.days);
    together = kept ?? together;
    return made(record);
  };
}

function keepState(kept: Together, loop: PowerLoop, day: number): void {
  kept.day = day;
  copyState(loop.state, kept.loop.state);
  kept.loop.burns.set(loop.burns);
}

/** Puts a loop with all the power it wants where the other stood, and takes down what the house did until then. */
function takeOver({ day, loop: was, record: of }: Together, loop: PowerLoop, record: PowerRecord, days: Days): void {
  copyState(was.state, loop.state);
  loop.burns.set(was.burns);
  const charge = (loop.power[powerSlots.stored] ?? 0) / loop.system.battery.energy;
  const cell = loop.power[powerSlots.cell] ?? 0;
  const { count } = loop.weather;
  for (let i = 0; i < day * days.perDay; i++) {
    const step = (days.from + i) % count;
    for (const name of ofHouse) record[name][step] = of[name][step] ?? 0;
    record.charge[step] = charge;
    record.cell[step] = cell;
  }
}

/** What of a record the house alone decides. */
const ofHouse = ['household', 'unit', 'standing', 'heat', 'room', 'cold', 'stove'] as const;
