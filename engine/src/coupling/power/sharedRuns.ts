import { copyState } from '../../physics/building/index.ts';
import { powerSlots } from '../../physics/power/index.ts';
import { emptyRecord } from './emptyRecord.ts';
import { type PowerLoop, type PowerRecord, runTogether } from './powerLoop.kernel.ts';
import type { PowerRun, PowerRuns, PowerWay, RunWith } from './powerRun.ts';

/** The days that are run: `settling` of them before the first that counts, which begins at step `from`. */
export type Days = { readonly from: number; readonly days: number; readonly perDay: number; readonly settling: number };

/**
 * How long a house on its power went as it would with all the power it wants: up to the beginning of a day, counted from
 * the first that is recorded. The loop stands as it stood then.
 */
type Together = { day: number; readonly loop: PowerLoop; readonly record: PowerRecord };

type Fresh = (way: PowerWay, humid: boolean, given: RunWith) => PowerLoop;

/**
 * Runs that share what they have in common, to the bit. As long as power holds nothing back, the house goes as it does
 * with all the power it wants: asked for after the run as it is set up, that run begins where the two part. Where
 * `humid` is not asked for, humidity is left out until a run cools, which is then made again with it.
 */
export function sharedRuns(fresh: Fresh, of: Days, humid: boolean, made: (record: PowerRecord) => PowerRun): PowerRuns {
  let follows = humid;
  let together: Together | undefined;
  const once = (way: PowerWay, tell: (done: number) => void, given: RunWith): PowerRecord | undefined => {
    const plain = !given.raised && !given.rule && !given.settled;
    const loop = fresh(way, follows, given);
    const record = emptyRecord(loop.weather.count);
    const before = plain && way === 'unlimited' ? together : undefined;
    const kept = plain && way === 'with-generator' ? { day: 0, loop: fresh(way, follows, given), record } : undefined;
    if (before) takeOver(before, loop, record, of);
    if (!runDays(loop, of, before?.day ?? -of.settling, given.settled, record, tell, kept)) return undefined;
    together = kept ?? together;
    return record;
  };
  return (way, tell, given = {}) => {
    const first = once(way, tell, given);
    if (first) return made(first);
    follows = true;
    together = undefined;
    return made(once(way, tell, given) ?? emptyRecord(0));
  };
}

/** Runs day after day; false, and no further, where a run that leaves humidity out cools. */
function runDays(
  loop: PowerLoop,
  { from, days, perDay }: Days,
  first: number,
  settled: PowerRecord | undefined,
  record: PowerRecord,
  tell: (done: number) => void,
  kept: Together | undefined,
): boolean {
  const { count } = loop.weather;
  for (let day = first; day < days; day++) {
    if (kept && loop.parted[0] === 0) keep(kept, loop, day);
    runTogether(loop, count + from + day * perDay, perDay, day < 0 ? settled : record);
    if (!loop.humid && loop.cooled[0] === 1) return false;
    if (day >= 0) tell((day + 1) * perDay);
  }
  if (kept && loop.parted[0] === 0) keep(kept, loop, days);
  return true;
}

function keep(kept: Together, loop: PowerLoop, day: number): void {
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
