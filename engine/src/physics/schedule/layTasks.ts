import { plannedMinutes } from './durations.ts';
import type { LaidPiece, StartTable, WorkLayout } from './layout.ts';
import { layWork } from './layWork.ts';
import { fixedTable, fullPace, startTable } from './tables.kernel.ts';
import { headsAndTails } from './times.kernel.ts';
import { missingOf, paceOf, type Ticks, tickUp } from './windows.ts';
import type { WorkPiece, WorkProblem, WorkSpec, WorkTask } from './work.ts';

/** One laid piece and where it came from; a task without pieces is laid as one without length. */
export type Laid = {
  readonly task: WorkTask;
  readonly piece?: WorkPiece;
  /** Minutes of work an hour that its calendars, and what it needs, leave at each tick. */
  readonly pace: Uint8Array;
};

/** Work laid out in ticks, and the way back to tasks. `laid[i]` is piece i of the layout. */
export type LaidTasks = {
  readonly w: WorkLayout;
  readonly ticks: Ticks;
  readonly laid: readonly Laid[];
  /** Deadlines that cannot be kept whatever is done, and deliveries after them. */
  readonly problems: readonly WorkProblem[];
};

type Draft = Laid & { readonly laidPiece: LaidPiece };

/** Lays a spec out that `inspectWork` found nothing wrong with. Refused problems in place of a layout where there is no way. */
export function layTasks(spec: WorkSpec): LaidTasks | { readonly refused: readonly WorkProblem[] } {
  const step = spec.step ?? 5;
  const ticks = { step, horizon: Math.floor(spec.horizon / step + 1e-9) };
  const missing = spec.resources.map((r) => missingOf(r, ticks));
  const base = new Int32Array(missing.length * (ticks.horizon + 1));
  missing.forEach((row, r) => {
    base.set(row, r * (ticks.horizon + 1));
  });
  const drafts = draftPieces(spec, ticks, missing);
  const stuck = drafts.flatMap((d) => noWindow(d, ticks));
  holdPinned(spec, drafts, base, ticks);
  const clashes = pinnedClashes(spec, drafts, base, ticks);
  if (stuck.length + clashes.length > 0) return { refused: [...stuck, ...clashes] };
  const capacity = spec.resources.map((r) => r.units);
  const w = layWork(
    drafts.map((d) => d.laidPiece),
    capacity,
    ticks.horizon,
    base,
  );
  const { head } = headsAndTails({ ...w, due: w.due.map(() => ticks.horizon) }, ticks.horizon);
  const early = drafts.flatMap((d, i) => pinnedTooEarly(d, head[i] ?? 0, ticks));
  if (early.length > 0) return { refused: early };
  return { w, ticks, laid: drafts, problems: lateAnyway(w, drafts, head, step) };
}

/** Pieces still to be done, in the order of the tasks; those of a task in a chain. */
function draftPieces(spec: WorkSpec, ticks: Ticks, missing: readonly Int32Array[]): Draft[] {
  const { step } = ticks;
  const pace = pacesOf(spec, ticks, missing);
  const tables = new Map<string, StartTable>();
  const now = tickUp(spec.now ?? 0, step);
  const drafts: Draft[] = [];
  const lastOf = new Map<string, number | { readonly done: number }>();
  const after: { draft: number; task: WorkTask; wait: number }[] = [];
  for (const task of spec.tasks) {
    const done = task.pieces.findLastIndex((p) => p.doneAt !== undefined);
    const ended = Math.max(...task.pieces.map((p) => p.doneAt ?? Number.NEGATIVE_INFINITY));
    const left: (WorkPiece | undefined)[] = task.pieces.slice(done + 1);
    if (left.length === 0 && done >= 0) {
      lastOf.set(task.id, { done: ended });
      continue;
    }
    const key = keyOf(task);
    const open = pace(task);
    (left.length > 0 ? left : [undefined]).forEach((piece, k) => {
      const length = piece ? tickUp(plannedMinutes(piece), step) : 0;
      const wait = piece?.wait ?? 0;
      const begun = k === 0 && done >= 0 ? tickUp(ended + wait, step) : 0;
      const named = `${key} ${length}`;
      const table = tables.get(named) ?? startTable(open, length, ticks.horizon);
      tables.set(named, table);
      if (k === 0) after.push({ draft: drafts.length, task, wait: 0 });
      const last = k === Math.max(0, left.length - 1);
      drafts.push({
        task,
        ...(piece ? { piece } : {}),
        pace: open,
        laidPiece: {
          length,
          table: piece?.pinned ? pinnedTable(piece, ticks) : table,
          needs: piece?.pinned
            ? []
            : task.needs.map((x) => ({ of: spec.resources.findIndex((r) => r.id === x.resource), units: x.units })),
          after: k === 0 ? [] : [{ piece: drafts.length - 1, lag: tickUp(wait, step) }],
          release: piece?.pinned
            ? k === 0 && done >= 0
              ? Math.max(0, Math.round((ended + wait) / step))
              : 0
            : Math.max(now, begun, tickUp(task.release ?? 0, step)),
          ...(last && task.deadline !== undefined ? { due: Math.floor(task.deadline / step + 1e-9) } : {}),
          ...(task.priority === undefined ? {} : { priority: task.priority }),
        },
      });
    });
    lastOf.set(task.id, drafts.length - 1);
  }
  for (const { draft, task } of after) {
    const d = drafts[draft];
    if (d) drafts[draft] = { ...d, laidPiece: afterTasks(d, task, lastOf, step) };
  }
  return drafts;
}

function afterTasks(
  d: Draft,
  task: WorkTask,
  lastOf: ReadonlyMap<string, number | { readonly done: number }>,
  step: number,
): LaidPiece {
  const arcs = [...d.laidPiece.after];
  let release = d.laidPiece.release ?? 0;
  for (const a of task.after ?? []) {
    const last = lastOf.get(a.task);
    if (typeof last === 'number') arcs.push({ piece: last, lag: tickUp(a.wait ?? 0, step) });
    else if (last) {
      const ready = last.done + (a.wait ?? 0);
      release = Math.max(release, d.piece?.pinned ? Math.round(ready / step) : tickUp(ready, step));
    }
  }
  return { ...d.laidPiece, after: arcs, release };
}

const keyOf = (task: WorkTask): string =>
  JSON.stringify([[...(task.calendars ?? [])].sort(), task.needs.map((x) => `${x.resource} ${x.units}`).sort()]);

/** Paces by calendars and needs, each made once. */
function pacesOf(spec: WorkSpec, ticks: Ticks, missing: readonly Int32Array[]): (task: WorkTask) => Uint8Array {
  const own = new Map(spec.calendars.map((c) => [c.id, paceOf(c, ticks)]));
  const made = new Map<string, Uint8Array>();
  return (task) => {
    const key = keyOf(task);
    const known = made.get(key);
    if (known) return known;
    const pace = new Uint8Array(ticks.horizon + 1).fill(fullPace);
    for (const id of task.calendars ?? [])
      own.get(id)?.forEach((p, t) => {
        pace[t] = Math.min(pace[t] ?? 0, p);
      });
    for (const { resource, units } of task.needs) {
      const r = spec.resources.findIndex((x) => x.id === resource);
      const most = (spec.resources[r]?.units ?? 0) - units;
      missing[r]?.forEach((gone, t) => {
        if (gone > most) pace[t] = 0;
      });
    }
    made.set(key, pace);
    return pace;
  };
}

/** A pin's nearest ticks, so that pins which meet still do. */
const pinnedTicks = (p: WorkPiece, { step, horizon }: Ticks) => ({
  from: Math.min(horizon, Math.max(0, Math.round((p.pinned?.from ?? 0) / step))),
  to: Math.min(horizon, Math.max(0, Math.round((p.pinned?.to ?? 0) / step))),
});

function pinnedTable(p: WorkPiece, ticks: Ticks): StartTable {
  const { from, to } = pinnedTicks(p, ticks);
  return fixedTable(from, to, ticks.horizon);
}

/** What pinned pieces hold is not there for others. */
function holdPinned(spec: WorkSpec, drafts: readonly Draft[], base: Int32Array, ticks: Ticks): void {
  for (const { task, piece } of drafts) {
    if (!piece?.pinned) continue;
    const { from, to } = pinnedTicks(piece, ticks);
    for (const { resource, units } of task.needs) {
      const row = spec.resources.findIndex((r) => r.id === resource) * (ticks.horizon + 1);
      for (let t = from; t < to; t++) base[row + t] = (base[row + t] ?? 0) + units;
    }
  }
}

function pinnedClashes(spec: WorkSpec, drafts: readonly Draft[], base: Int32Array, ticks: Ticks): WorkProblem[] {
  return drafts.flatMap(({ task, piece, pace }) => {
    if (!piece?.pinned) return [];
    const { from, to } = pinnedTicks(piece, ticks);
    const short = task.needs.filter(({ resource }) => {
      const r = spec.resources.findIndex((x) => x.id === resource);
      const row = base.subarray(r * (ticks.horizon + 1) + from, r * (ticks.horizon + 1) + to);
      return row.some((x) => x > (spec.resources[r]?.units ?? 0));
    });
    const shut = short.length === 0 && pace.subarray(from, to).some((x) => x === 0);
    const beyond = piece.pinned.to > (ticks.horizon + 0.5) * ticks.step;
    if (short.length === 0 && !shut && !beyond) return [];
    const names = shut ? (task.calendars ?? []) : short.map((x) => x.resource);
    return [{ code: 'pinned-clash', grade: 'refused', task: task.id, piece: piece.id, names }];
  });
}

/** Pinned before what has to come first can be finished. */
function pinnedTooEarly({ task, piece }: Draft, head: number, { horizon }: Ticks): WorkProblem[] {
  if (!piece?.pinned || head <= horizon) return [];
  const names = (task.after ?? []).map((a) => a.task);
  return [{ code: 'pinned-clash', grade: 'refused', task: task.id, piece: piece.id, names }];
}

function noWindow({ task, piece, pace, laidPiece }: Draft, { step, horizon }: Ticks): WorkProblem[] {
  const from = laidPiece.release ?? 0;
  if (!piece || piece.pinned || (from <= horizon && (laidPiece.table.next[from] ?? 0) <= horizon)) return [];
  let longest = 0;
  for (let t = from, run = 0; t < horizon; t++) {
    run = (pace[t] ?? 0) > 0 ? run + (pace[t] ?? 0) : 0;
    longest = Math.max(longest, run);
  }
  return [
    {
      code: 'no-window',
      grade: 'refused',
      task: task.id,
      piece: piece.id,
      names: task.calendars ?? [],
      minutes: (longest * step) / fullPace,
      needed: laidPiece.length * step,
    },
  ];
}

/** Deadlines that windows and what comes before make impossible: the plan goes by the earliest end there is. */
function lateAnyway(w: WorkLayout, drafts: readonly Draft[], head: Int32Array, step: number): WorkProblem[] {
  return drafts.flatMap(({ task, laidPiece }, i): WorkProblem[] => {
    const due = laidPiece.due;
    const end = laidPiece.table.end[head[i] ?? 0] ?? 0;
    if (due === undefined || end <= due) return [];
    w.due[i] = Math.min(w.horizon, end);
    const late = { grade: 'late', task: task.id, names: [] } as const;
    if ((task.release ?? 0) >= (task.deadline ?? 0))
      return [{ code: 'release-after-deadline', minutes: task.release ?? 0, ...late }];
    return [{ code: 'deadline-too-early', minutes: end * step, ...late }];
  });
}
