import { circleIn } from './layWork.ts';
import type { Span, WorkPiece, WorkProblem, WorkSpec, WorkTask } from './work.ts';

/** Ticks and pieces above which nothing is planned: 200 days of five minutes. */
export const mostTicks = 60_000;
const mostPieces = 1000;
/** Ticks times pieces: the room that tables of starts take. */
const mostPlaces = 16_000_000;

const refused = (
  code: WorkProblem['code'],
  names: readonly string[],
  where: { readonly task?: string; readonly piece?: string } = {},
): WorkProblem => ({ code, grade: 'refused', names, ...where });

/** What forbids planning, before any calendar is looked at: numbers, names, circles. Empty: nothing does. */
export function inspectWork(spec: WorkSpec): WorkProblem[] {
  const problems = [...badNumbers(spec), ...names(spec)];
  if (problems.length > 0) return problems;
  const ticks = spec.horizon / (spec.step ?? 5);
  const pieces = spec.tasks.reduce((a, t) => a + t.pieces.length, 0);
  if (ticks > mostTicks || pieces > mostPieces || ticks * pieces > mostPlaces) return [refused('too-large', [])];
  const at = new Map(spec.tasks.map((t, i) => [t.id, i]));
  const circle = circleIn(spec.tasks.map((t) => (t.after ?? []).map((a) => at.get(a.task) ?? 0)));
  return circle.length > 0
    ? [
        refused(
          'circle',
          circle.map((i) => spec.tasks[i]?.id ?? ''),
        ),
      ]
    : [];
}

const good = (x: number | undefined, least = 0): boolean => x === undefined || (Number.isFinite(x) && x >= least);
const goodSpans = (spans: readonly Span[] | undefined): boolean =>
  (spans ?? []).every((s) => Number.isFinite(s.from) && Number.isFinite(s.to) && s.to >= s.from);
const goodUnits = (x: number): boolean => Number.isInteger(x) && x >= 0;

function goodPiece(p: WorkPiece): boolean {
  const x = p.minutes;
  const length = typeof x === 'number' ? good(x) : good(x.low) && good(x.likely, x.low) && good(x.high, x.likely);
  return (
    length &&
    good(p.planned) &&
    good(p.wait) &&
    good(p.doneAt, Number.NEGATIVE_INFINITY) &&
    (!p.pinned || goodSpans([p.pinned]))
  );
}

function badNumbers(spec: WorkSpec): WorkProblem[] {
  const found: WorkProblem[] = [];
  if (!good(spec.horizon, 1) || !good(spec.now) || !good(spec.step, 0.5)) found.push(refused('bad-number', []));
  for (const r of spec.resources)
    if (
      !goodUnits(r.units) ||
      !goodSpans(r.there) ||
      !goodSpans(r.fewer) ||
      !(r.fewer ?? []).every((f) => goodUnits(f.units))
    )
      found.push(refused('bad-number', [r.id]));
  for (const c of spec.calendars) {
    const heat = (c.heat ?? []).every((h) => h.minutesAnHour >= 0 && h.minutesAnHour <= 60);
    if (!goodSpans(c.open) || !goodSpans(c.shut) || !goodSpans(c.heat) || !heat)
      found.push(refused('bad-number', [c.id]));
  }
  for (const t of spec.tasks) {
    const fine =
      good(t.release) &&
      good(t.deadline) &&
      good(t.priority, Number.NEGATIVE_INFINITY) &&
      t.needs.every((x) => goodUnits(x.units)) &&
      (t.after ?? []).every((a) => good(a.wait));
    if (!fine) found.push(refused('bad-number', [], { task: t.id }));
    for (const p of t.pieces) if (!goodPiece(p)) found.push(refused('bad-number', [], { task: t.id, piece: p.id }));
  }
  return found;
}

function names(spec: WorkSpec): WorkProblem[] {
  const found: WorkProblem[] = [];
  for (const list of [spec.resources, spec.calendars, spec.tasks]) {
    const ids = list.map((x) => x.id);
    const twice = [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];
    if (twice.length > 0) found.push(refused('named-twice', twice));
  }
  const [resources, calendars, tasks] = [spec.resources, spec.calendars, spec.tasks].map(
    (list) => new Set(list.map((x) => x.id)),
  );
  for (const t of spec.tasks) {
    const unknown = [
      ...t.needs.map((x) => x.resource).filter((id) => !resources?.has(id)),
      ...(t.calendars ?? []).filter((id) => !calendars?.has(id)),
      ...(t.after ?? []).map((a) => a.task).filter((id) => !tasks?.has(id)),
    ];
    if (unknown.length > 0) found.push(refused('unknown-name', unknown, { task: t.id }));
    const pieces = t.pieces.map((p) => p.id);
    if (new Set(pieces).size < pieces.length) found.push(refused('named-twice', pieces, { task: t.id }));
  }
  for (const t of spec.tasks) found.push(...tooMany(spec, t));
  return found;
}

function tooMany(spec: WorkSpec, t: WorkTask): WorkProblem[] {
  const short = t.needs.filter((x) => x.units > (spec.resources.find((r) => r.id === x.resource)?.units ?? x.units));
  return short.length > 0
    ? [
        refused(
          'not-enough',
          short.map((x) => x.resource),
          { task: t.id },
        ),
      ]
    : [];
}
