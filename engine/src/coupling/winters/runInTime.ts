import type { PowerRecord } from '../power/powerLoop.kernel.ts';
import type { Span } from '../power/powerRun.ts';
import type { PowerRun } from '../power/runWay.ts';

/** A run over a span of its year with every column in the order of time, so that a spell across New Year is one. */
export function runInTime(run: PowerRun, { firstDay, days }: Span): PowerRun {
  const perDay = Math.round(24 / run.hours);
  const cut = <T extends Float64Array | Uint8Array>(x: T): T => inOrder(x, firstDay * perDay, days * perDay);
  const steps = run.weather.steps.count;
  const record = Object.fromEntries(
    Object.entries(run.record).map(([name, x]) => [name, x.length === steps ? cut(x) : x]),
  ) as PowerRecord;
  const { weather } = run;
  const outdoor = cut(weather.steps.outdoor);
  return { ...run, record, sun: cut(run.sun), weather: { ...weather, steps: { ...weather.steps, outdoor } } };
}

/** So many values from one on, round the end. */
function inOrder<T extends Float64Array | Uint8Array>(x: T, from: number, count: number): T {
  const out = x.slice(0, count) as T;
  for (let i = 0; i < count; i++) out[i] = x[(from + i) % x.length] ?? 0;
  return out;
}
