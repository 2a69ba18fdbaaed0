import { useEffect, useMemo, useRef, useState } from 'react';
import { useField } from '../form/useField.ts';
import { useSession, useUnits } from '../services.ts';
import { type Point, type Points, pointAfter, type Spot, withNew, without, withPoint } from './corners.ts';
import { gridStep, snapped } from './snap.ts';
import { surroundingsOf } from './surroundings.ts';

/** The points of one drawn field: as they stand, as they are being moved, and the acts on them. */
export function usePoints(path: readonly string[]) {
  const field = useField(path);
  const project = useSession((s) => s.project);
  const step = gridStep[useUnits()];
  const dotted = path.join('.');
  const around = useMemo(() => surroundingsOf(project, dotted.split('.')), [project, dotted]);
  const kept = (field.value as Points | undefined) ?? none;
  const [draft, setDraft] = useState<Points>();
  const moving = useRef<Points>(undefined);
  const [chosen, choose] = useState<number>();
  // Whatever changes the points meanwhile, an undo for one, ends the move.
  useEffect(() => {
    if (!kept) return;
    moving.current = undefined;
    setDraft(undefined);
  }, [kept]);
  const put = (points: Points): void => {
    moving.current = undefined;
    setDraft(undefined);
    field.change(points.length === 0 ? undefined : points);
  };
  const show = (points: Points | undefined): void => {
    moving.current = points;
    setDraft(points);
  };
  const last = kept.length - 1;
  return {
    kept,
    points: draft ?? kept,
    around,
    step,
    barred: field.barred,
    problems: field.problems,
    chosen: chosen !== undefined && chosen <= last ? chosen : undefined,
    choose,
    nowAt: (at: number): Point => (moving.current ?? kept)[at] ?? [],
    /** Shows a corner dragged to a spot; `reach` is the distance from which other ends draw it to themselves. */
    drag: (at: number, spot: Spot, reach: number): void => {
      const point = kept[at];
      if (!point) return;
      const beside = [
        kept[at - 1] ?? (around.closed ? kept[last] : undefined),
        kept[at + 1] ?? (around.closed ? kept[0] : undefined),
      ];
      const { spot: to, end } = snapped(spot, {
        step,
        ends: around.ends,
        beside: beside.filter((p) => p !== undefined),
        reach,
      });
      // Where ways join, they join at one height.
      const joins = !around.closed && (at === 0 || at === last);
      const height = joins && end?.[2] !== undefined ? [end[2]] : point.slice(2);
      show(withPoint(kept, at, [...to, ...height]));
    },
    nudge: (at: number, [dx, dy]: Spot): void => {
      const [x = 0, y = 0, ...height] = (moving.current ?? kept)[at] ?? [];
      show(withPoint(kept, at, [x + dx, y + dy, ...height]));
    },
    letGo: (): void => {
      if (moving.current) put(moving.current);
    },
    giveUp: (): void => show(undefined),
    set: (at: number, point: Point): void => put(withPoint(kept, at, point)),
    remove: (at: number): void => {
      put(without(kept, at));
      choose(undefined);
    },
    /** A corner after another: at the point given, else where one would be wanted. */
    add: (after: number, point?: Point): void => {
      const first = kept.length === 0;
      put(withNew(kept, after, point ?? (first ? around.start : pointAfter(kept, after, around.closed, 10 * step))));
      choose(after + 1);
    },
    replace: put,
  };
}

export type DrawnPoints = ReturnType<typeof usePoints>;

const none: Points = [];
