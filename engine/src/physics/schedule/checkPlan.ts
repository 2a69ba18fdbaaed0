import { plannedMinutes } from './durations.ts';
import type { Span, WorkSpec, WorkTask } from './work.ts';

/** A piece in its place, as far as it is checked: minutes. */
export type Placed = { readonly task: string; readonly piece: string; readonly from: number; readonly to: number };

const nudge = 1e-6;
const covered = (spans: readonly Span[], at: number): boolean => spans.some((s) => s.from <= at && at < s.to);

/**
 * What is wrong with a plan, in words for whoever looks after the planner; empty: nothing. It knows nothing of ticks and tables: goes
 * through the minutes of every piece and holds them against the spec as it was entered.
 */
export function checkPlan(spec: WorkSpec, placed: readonly Placed[]): string[] {
  const wrong: string[] = [];
  const at = new Map(placed.map((p) => [JSON.stringify([p.task, p.piece]), p]));
  for (const task of spec.tasks) {
    let ready = readyFrom(spec, task, at);
    task.pieces.forEach((piece, k) => {
      if (piece.doneAt !== undefined) {
        ready = piece.doneAt;
        return;
      }
      if (task.pieces.slice(k).some((p) => p.doneAt !== undefined)) return;
      const p = at.get(JSON.stringify([task.id, piece.id]));
      const name = `${task.id} ${piece.id}`;
      if (!p) {
        wrong.push(`${name} has no place`);
        return;
      }
      if (k > 0) ready = Math.max(ready, endBefore(task, k, at) + (piece.wait ?? 0));
      // A pin is kept to its nearest tick.
      const near = piece.pinned ? (spec.step ?? 5) : nudge;
      if (p.from < ready - near) wrong.push(`${name} starts before ${ready}`);
      if (piece.pinned && (p.from > Math.max(0, piece.pinned.from) + near || p.to < piece.pinned.to - near))
        wrong.push(`${name} left its pin`);
      if (!piece.pinned) {
        if (p.from < Math.max(spec.now ?? 0, task.release ?? 0) - nudge) wrong.push(`${name} starts too soon`);
        const done = workDone(spec, task, p);
        if (!(done >= plannedMinutes(piece) - nudge))
          wrong.push(`${name} gets ${done} of ${plannedMinutes(piece)} minutes`);
      }
    });
  }
  return [...wrong, ...overused(spec, placed)];
}

function endBefore(task: WorkTask, k: number, at: ReadonlyMap<string, Placed>): number {
  const before = task.pieces[k - 1];
  return before?.doneAt ?? at.get(JSON.stringify([task.id, before?.id]))?.to ?? Number.NEGATIVE_INFINITY;
}

function readyFrom(spec: WorkSpec, task: WorkTask, at: ReadonlyMap<string, Placed>): number {
  let ready = Number.NEGATIVE_INFINITY;
  for (const a of task.after ?? []) {
    const other = spec.tasks.find((t) => t.id === a.task);
    if (!other) continue;
    const ends = other.pieces.map(
      (p) => p.doneAt ?? at.get(JSON.stringify([other.id, p.id]))?.to ?? Number.NEGATIVE_INFINITY,
    );
    const end = other.pieces.length > 0 ? Math.max(...ends) : readyFrom(spec, other, at);
    ready = Math.max(ready, end + (a.wait ?? 0));
  }
  return ready;
}

/** Minutes of work between two times; not a number where a window shuts in between. */
function workDone(spec: WorkSpec, task: WorkTask, { from, to }: Placed): number {
  const calendars = spec.calendars.filter((c) => task.calendars?.includes(c.id));
  let work = 0;
  for (let t = from; t < to - nudge; t++) {
    let pace = 60;
    for (const c of calendars) {
      if (c.open && !covered(c.open, t)) return Number.NaN;
      if (c.shut && covered(c.shut, t)) return Number.NaN;
      for (const h of c.heat ?? []) if (covered([h], t)) pace = Math.min(pace, h.minutesAnHour);
    }
    if (pace === 0) return Number.NaN;
    work += (Math.min(1, to - t) * pace) / 60;
  }
  return work;
}

function overused(spec: WorkSpec, placed: readonly Placed[]): string[] {
  return spec.resources.flatMap((r) => {
    const held = placed.flatMap((p) => {
      const units = spec.tasks.find((t) => t.id === p.task)?.needs.find((n) => n.resource === r.id)?.units ?? 0;
      return units > 0 && p.to > p.from ? [{ ...p, units }] : [];
    });
    const edges = [r.there ?? [], r.fewer ?? []].flat().flatMap((s) => [s.from, s.to]);
    const times = [...held.map((p) => p.from), ...edges];
    const wrong = times.find((t) => {
      const use = held.filter((p) => p.from <= t && t < p.to).reduce((a, p) => a + p.units, 0);
      const there = r.there && !covered(r.there, t) ? 0 : r.units;
      const fewer = (r.fewer ?? []).filter((f) => covered([f], t)).map((f) => f.units);
      return use > Math.min(there, ...fewer);
    });
    return wrong === undefined ? [] : [`${r.id} is short at ${wrong}`];
  });
}
