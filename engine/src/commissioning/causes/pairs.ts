import { methods, ownScatter } from '../methods.ts';
import type { FaultKind } from './faults.ts';
import { type Heard, type Point, pointsOf } from './likelihood.ts';
import type { Cause, ResponseTable } from './table.ts';

/** Causes that cannot be there at once, or would be one. */
const either: readonly (readonly FaultKind[])[] = [
  ['blower-setting', 'other-speed'],
  ['low-charge', 'high-charge'],
  ['crushed-run', 'shut-damper'],
];

const alone: ReadonlySet<FaultKind> = new Set(['none', 'other']);

/**
 * Two causes at once, with the chance of both before anything is read, were they independent. Only causes that move
 * something that was read: of the others nothing was learned.
 */
export function paired(
  table: ResponseTable,
  heard: readonly Heard[],
  weigh: (cause: Cause) => number,
): readonly { readonly causes: readonly [Cause, Cause]; readonly prior: number }[] {
  const none = table.causes.find((c) => c.kind === 'none');
  const moving = table.causes.filter((c) => !alone.has(c.kind) && weigh(c) > 0 && moves(c, table, heard));
  const sound = none ? none.prior * weigh(none) : 1;
  return moving.flatMap((a, i) =>
    moving
      .slice(i + 1)
      .filter((b) => a.kind !== b.kind && together(a, b))
      .map((b) => ({ causes: [a, b] as const, prior: (a.prior * weigh(a) * b.prior * weigh(b)) / sound })),
  );
}

const together = (a: Cause, b: Cause): boolean =>
  !either.some((kinds) => kinds.includes(a.kind) && kinds.includes(b.kind)) || a.subject !== b.subject;

/** Whether a cause at its worst moves a reading by more than the reading's own error. */
function moves(cause: Cause, { base, channels }: ResponseTable, heard: readonly Heard[]): boolean {
  return heard.some(({ channel, means }) => {
    const group = channels[channel]?.group ?? 'pressure';
    const scale = group === 'temperature' ? 1 : Math.abs(base[channel] ?? 0);
    const error = Math.hypot(methods[means].random, ownScatter[group]) * scale;
    return cause.nodes.some((n) => Math.abs((n.values[channel] ?? 0) - (base[channel] ?? 0)) > error);
  });
}

/** Severities of both: shares multiply, degrees add. Against solving both at once: see the test. */
export function pairedPoints(table: ResponseTable, a: Cause, b: Cause): readonly Point[] {
  const { base, channels } = table;
  const warm = channels.map((c) => c.group === 'temperature');
  const [first, second] = [pointsOf(a), pointsOf(b)];
  return first.flatMap((p) =>
    second.map((q): Point => {
      const share = (of: readonly number[], c: number) => (base[c] ? (of[c] ?? 0) / (base[c] ?? 1) : 1);
      return {
        logWeight: p.logWeight + q.logWeight,
        values: base.map((v, c) =>
          warm[c] ? (p.values[c] ?? 0) + (q.values[c] ?? 0) - v : v * share(p.values, c) * share(q.values, c),
        ),
        spreads: [
          ...p.spreads.map((s) => s.map((x, c) => (warm[c] ? x : x * share(q.values, c)))),
          ...q.spreads.map((s) => s.map((x, c) => (warm[c] ? x : x * share(p.values, c)))),
        ],
        baseOnly: false,
        open: false,
      };
    }),
  );
}
