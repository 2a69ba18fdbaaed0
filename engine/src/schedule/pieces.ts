import { atShare, meanOf, quantilesOf, type ThreePoint, type WorkPiece } from '../physics/schedule/index.ts';
import type { Task } from '../plan/lines.ts';

/** Minutes of a part of work that may be left at any time, about. */
const anyPart = 30;
/** Share of cases in which a part is done within what it is planned with. Common practice, no source. */
export const marginShare = 0.8;

/** Parts of a task at a pace: each ends at a safe stop. */
export const partsOf = ({ duration, parts = 1 }: Task, pace: number): number =>
  Math.max(1, parts === 'any' ? Math.ceil((duration.likely * pace) / 60 / anyPart) : Math.floor(parts));

/** The parts of a task as the planner takes them, planned with a margin. */
export function piecesOf(task: Task, pace: number): WorkPiece[] {
  const n = partsOf(task, pace);
  const each = (seconds: number) => (seconds * pace) / 60 / n;
  const { low, likely, high } = task.duration;
  const piece = withMargin({ low: each(low), likely: each(likely), high: each(high) });
  return Array.from({ length: n }, (_, i) => ({ id: String(i + 1), ...piece }));
}

/** Three points with the minutes that are planned for them. */
export const withMargin = (minutes: ThreePoint): Pick<WorkPiece, 'minutes' | 'planned'> => ({
  minutes,
  planned: atShare(quantilesOf(minutes), marginShare),
});

/** What a piece is planned with where that share of cases is margin enough, at most what it was; 0: the mean. */
export function lessMargin({ minutes, planned }: WorkPiece, share: number): Pick<WorkPiece, 'planned'> {
  if (typeof minutes === 'number') return {};
  const mean = meanOf(minutes);
  const less = share === 0 ? mean : Math.max(mean, atShare(quantilesOf(minutes), share));
  return { planned: Math.min(planned ?? mean, less) };
}
