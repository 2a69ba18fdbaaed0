import { fullPace } from './tables.kernel.ts';
import type { Span, WorkCalendar, WorkResource } from './work.ts';

/** Ticks of a plan: minutes to a tick, and how many. */
export type Ticks = { readonly step: number; readonly horizon: number };

const nudge = 1e-9;
/** The first tick not before a minute. */
export const tickUp = (minute: number, step: number): number => Math.ceil(minute / step - nudge);
const tickDown = (minute: number, step: number): number => Math.floor(minute / step + nudge);

/** Calls with the ticks that lie wholly within a span. */
function within(span: Span, { step, horizon }: Ticks, mark: (t: number) => void): void {
  const to = Math.min(horizon, tickDown(span.to, step));
  for (let t = Math.max(0, tickUp(span.from, step)); t < to; t++) mark(t);
}

/** Calls with the ticks that a span touches. */
function touching(span: Span, { step, horizon }: Ticks, mark: (t: number) => void): void {
  const to = Math.min(horizon, tickUp(span.to, step));
  for (let t = Math.max(0, tickDown(span.from, step)); t < to; t++) mark(t);
}

/** Minutes of work an hour that a calendar leaves at each tick; a broken part is left out. */
export function paceOf(c: WorkCalendar, ticks: Ticks): Uint8Array {
  const pace = new Uint8Array(ticks.horizon + 1).fill(c.open ? 0 : fullPace);
  for (const span of joined(c.open ?? []))
    within(span, ticks, (t) => {
      pace[t] = fullPace;
    });
  for (const h of c.heat ?? [])
    touching(h, ticks, (t) => {
      pace[t] = Math.min(pace[t] ?? 0, Math.floor(h.minutesAnHour));
    });
  for (const span of c.shut ?? [])
    touching(span, ticks, (t) => {
      pace[t] = 0;
    });
  return pace;
}

/** Units that are not there at each tick. */
export function missingOf(r: WorkResource, ticks: Ticks): Int32Array {
  const missing = new Int32Array(ticks.horizon + 1).fill(r.there ? r.units : 0);
  for (const span of joined(r.there ?? []))
    within(span, ticks, (t) => {
      missing[t] = 0;
    });
  for (const f of r.fewer ?? [])
    touching(f, ticks, (t) => {
      missing[t] = Math.max(missing[t] ?? 0, r.units - f.units);
    });
  return missing;
}

/** Spans that meet or overlap are one: two windows side by side let a piece run through. */
function joined(spans: readonly Span[]): Span[] {
  const sorted = [...spans].sort((a, b) => a.from - b.from || a.to - b.to);
  const out: Span[] = [];
  for (const s of sorted) {
    const last = out.at(-1);
    if (last && s.from <= last.to) out[out.length - 1] = { from: last.from, to: Math.max(last.to, s.to) };
    else out.push(s);
  }
  return out;
}
