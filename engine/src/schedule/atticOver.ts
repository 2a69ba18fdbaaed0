import { type Placed, plannedMinutes, type WorkSpec } from '../physics/schedule/index.ts';
import type { WorkFrame } from './result.ts';

/**
 * The most minutes that a part in the attic works beyond what the hours it lies in leave, minute by minute from the hours
 * themselves; 0 where none does. A part on a day whose hours are not known counts whole.
 */
export function atticOver(spec: WorkSpec, placed: readonly Placed[], attic: WorkFrame['attic']): number {
  let most = 0;
  for (const p of placed) {
    const task = spec.tasks.find((t) => t.id === p.task);
    const piece = task?.pieces.find((x) => x.id === p.piece);
    if (!piece || !task?.needs.some((n) => n.resource === 'attic')) continue;
    let left = 0;
    for (let t = p.from; t < p.to; t++) {
      const day = attic.find((d) => d.from <= t && t < d.from + 1440);
      left += (day?.minutes[Math.floor((t - day.from) / 60)] ?? 0) / 60;
    }
    most = Math.max(most, plannedMinutes(piece) - left);
  }
  return most > 1e-6 ? most : 0;
}
