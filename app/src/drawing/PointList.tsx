import { useId } from 'react';
import { Button } from '../look/Button.tsx';
import { useUnits } from '../services.ts';
import { CoordinateBox } from './CoordinateBox.tsx';
import type { DrawnPoints } from './usePoints.ts';

const axes = ['Across', 'Up', 'Height'] as const;

/** The same points as on the board, one after the other, in numbers: for keyboard, screen reader and tape. */
export function PointList({ drawn, label }: { drawn: DrawnPoints; label: string }) {
  const { points, around, barred, chosen, choose, add, remove, replace } = drawn;
  const id = useId();
  const units = useUnits();
  const shown = around.closed ? axes.slice(0, 2) : axes;
  return (
    <div className="points">
      <ol className="points-list" aria-label={`${label}, corner by corner`}>
        {points.map((point, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the row
          <li key={i} className={i === chosen ? 'chosen' : ''} onFocusCapture={() => choose(i)}>
            <fieldset>
              <legend>Corner {i + 1}</legend>
              <div className={`points-boxes ${units}`}>
                {shown.map((axis, k) => (
                  <CoordinateBox
                    key={axis}
                    id={`${id}-${i}-${axis}`}
                    label={axis}
                    corner={i + 1}
                    value={point[k] ?? 0}
                    barred={barred}
                    set={(m) => drawn.set(i, point.with(k, m))}
                  />
                ))}
              </div>
              <Button look="quiet" disabled={barred} onClick={() => add(i)}>
                Add one after<span className="unseen"> corner {i + 1}</span>
              </Button>
              <Button look="quiet" disabled={barred} onClick={() => remove(i)}>
                Remove<span className="unseen"> corner {i + 1}</span>
              </Button>
            </fieldset>
          </li>
        ))}
      </ol>
      {points.length === 0 ? (
        <Button disabled={barred} onClick={() => add(-1)}>
          <span aria-hidden="true">+</span> Add the first corner
        </Button>
      ) : (
        <Button look="quiet" disabled={barred} onClick={() => replace([])}>
          Take all corners away
        </Button>
      )}
    </div>
  );
}
