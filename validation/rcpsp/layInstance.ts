import { layWork, startTable, type WorkLayout } from '@kneewall/engine/physics';
import type { Instance } from './instance.ts';

/** An instance as pieces of work, one tick a period, within as long as all of it one after the other would take. */
export function layInstance(x: Instance): WorkLayout {
  const horizon = x.durations.reduce((a, d) => a + d, 0);
  const open = new Uint8Array(horizon + 1).fill(60);
  const tables = new Map(x.durations.map((d) => [d, startTable(open, d, horizon)]));
  const before: number[][] = x.durations.map(() => []);
  x.after.forEach((list, i) => {
    for (const j of list) before[j]?.push(i);
  });
  const pieces = x.durations.map((length, i) => ({
    length,
    table: tables.get(length) ?? startTable(open, length, horizon),
    needs: (x.needs[i] ?? []).map((units, of) => ({ of, units })),
    after: (before[i] ?? []).map((piece) => ({ piece, lag: 0 })),
  }));
  return layWork(pieces, x.capacity, horizon);
}
