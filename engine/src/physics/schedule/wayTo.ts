import type { PlacedPiece, WorkPlan } from './planWork.ts';

/**
 * Why a task, or without one all of the work, is finished no sooner: the pieces that waited for each other, the first of them first. What
 * that one waits for (a window, a delivery, the start) is its `why`. Empty: the plan has no such task.
 */
export function wayTo({ pieces }: WorkPlan, task?: string): PlacedPiece[] {
  const way: PlacedPiece[] = [];
  let at = lastOf(pieces.filter((p) => task === undefined || p.task === task));
  while (at && !way.includes(at)) {
    way.unshift(at);
    const { from, why } = at;
    const waits = why.because === 'after' || why.because === 'resource';
    at = waits ? lastOf(pieces.filter((p) => why.names.includes(p.task) && p.to <= from)) : undefined;
  }
  return way;
}

const lastOf = (pieces: readonly PlacedPiece[]): PlacedPiece | undefined =>
  pieces.reduce<PlacedPiece | undefined>((a, b) => (a && a.to >= b.to ? a : b), undefined);
