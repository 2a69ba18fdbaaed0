import { meanOf, type PlacedPiece, type WorkPiece, type WorkSpec, type WorkTask } from '../physics/schedule/index.ts';
import { atticHours, fitInDay, type Stretch } from './fitInDay.ts';
import type { Unplaced, WindowToAdd } from './result.ts';
import type { WorkInputs } from './workJob.ts';

const perDay = 1440;
/** Days after what comes before that are looked through for a window. */
const daysMost = 120;

/**
 * For each task without a place the soonest windows that would hold it, of those nobody has entered: after all that comes before it, in
 * hours in which people work, clear of every window there is, and in the attic only while its heat leaves time. What is placed stays. What
 * comes after such a task is looked for after it. Deterministic; nothing where no day within four months would do.
 */
export function windowsToAdd(
  spec: WorkSpec,
  placed: readonly PlacedPiece[],
  unplaced: readonly Unplaced[],
  { windows = [], otherDays }: Pick<WorkInputs, 'windows' | 'otherDays'>,
): WindowToAdd[] {
  const byTime = new Set(['no-window', 'does-not-fit', 'waits']);
  const open = new Set(unplaced.filter((u) => byTime.has(u.because)).map((u) => u.task));
  const never = new Set(unplaced.filter((u) => !byTime.has(u.because)).map((u) => u.task));
  if (open.size === 0 || !otherDays) return [];
  const ends = endsOf(spec, placed);
  const taken: Stretch[] = [...windows];
  const out: WindowToAdd[] = [];
  for (const task of inTurn(spec.tasks.filter((t) => open.has(t.id)))) {
    const before = task.after ?? [];
    // What waits for goods, papers or itself has no day, and neither has what comes after it.
    if (before.some((a) => never.has(a.task))) {
      never.add(task.id);
      continue;
    }
    const earliest = Math.max(
      spec.now ?? 0,
      task.release ?? 0,
      ...before.map((a) => (ends.get(a.task) ?? 0) + (a.wait ?? 0)),
    );
    const found = soonest(task, earliest, taken, otherDays);
    if (!found) {
      never.add(task.id);
      continue;
    }
    const missing = missingOf(task, windows, placed, earliest);
    const people = task.needs.find((n) => n.resource === 'people')?.units ?? 1;
    out.push(...found.map((w) => ({ task: task.id, ...w, people, missing })));
    taken.push(...found);
    ends.set(task.id, found.at(-1)?.to ?? earliest);
  }
  return out.sort((a, b) => a.from - b.from);
}

function endsOf(spec: WorkSpec, placed: readonly PlacedPiece[]): Map<string, number> {
  const ends = new Map<string, number>();
  const later = (id: string, at: number) => ends.set(id, Math.max(at, ends.get(id) ?? 0));
  for (const t of spec.tasks) for (const p of t.pieces) if (p.doneAt !== undefined) later(t.id, p.doneAt);
  for (const p of placed) later(p.task, p.to);
  return ends;
}

/** Tasks with what comes before each of them first. */
function inTurn(tasks: readonly WorkTask[]): WorkTask[] {
  const left = [...tasks];
  const out: WorkTask[] = [];
  while (left.length > 0) {
    const free = left.findIndex((t) => !(t.after ?? []).some((a) => left.some((o) => o.id === a.task)));
    // A circle has no first: its tasks are not among those looked for.
    out.push(...left.splice(Math.max(0, free), 1));
  }
  return out;
}

type Found = Pick<WindowToAdd, 'from' | 'to' | 'parts'>;

/** Windows day after day until all parts that are left have a place. */
function soonest(
  task: WorkTask,
  earliest: number,
  taken: readonly Stretch[],
  days: NonNullable<WorkInputs['otherDays']>,
): Found[] | undefined {
  const lengths = task.pieces.filter((p) => p.doneAt === undefined).map(minutesOf);
  const kind = { attic: (task.calendars ?? []).includes('attic'), noisy: (task.calendars ?? []).includes('quiet') };
  const out: Found[] = [];
  let from = earliest;
  const first = Math.floor(earliest / perDay);
  for (let day = first; day < first + daysMost && lengths.length > 0; day++) {
    const minutes = kind.attic ? atticHours(days, day) : undefined;
    const quiet = kind.noisy ? days.quiet : undefined;
    const found = fitInDay({ day, from, lengths, taken, minutes, quiet });
    if (!found) continue;
    out.push(found);
    lengths.splice(0, found.parts);
    from = found.to;
  }
  return lengths.length === 0 ? out : undefined;
}

const minutesOf = (p: WorkPiece): number =>
  p.planned ?? (typeof p.minutes === 'number' ? p.minutes : meanOf(p.minutes));

/** What the windows there are lack for the longest part of a task, the plainest reason first. */
function missingOf(
  task: WorkTask,
  windows: NonNullable<WorkInputs['windows']>,
  placed: readonly PlacedPiece[],
  earliest: number,
): WindowToAdd['missing'] {
  const needed = Math.max(0, ...task.pieces.filter((p) => p.doneAt === undefined).map(minutesOf));
  const people = task.needs.find((n) => n.resource === 'people')?.units ?? 1;
  const long = windows.filter((w) => w.to - w.from >= needed);
  if (long.length === 0) return 'length';
  const manned = long.filter((w) => w.people >= people);
  if (manned.length === 0) return 'people';
  const free = manned.some((w) => gapIn(w, placed, earliest) >= needed);
  return free && (task.calendars ?? []).includes('attic') ? 'cool' : 'time';
}

/** The longest stretch of a window, from a minute on, in which nothing is planned. */
function gapIn(window: Stretch, placed: readonly PlacedPiece[], earliest: number): number {
  let at = Math.max(window.from, earliest);
  let longest = 0;
  for (const p of placed.filter((x) => x.to > at && x.from < window.to).sort((a, b) => a.from - b.from)) {
    longest = Math.max(longest, p.from - at);
    at = Math.max(at, p.to);
  }
  return Math.max(longest, window.to - at);
}
