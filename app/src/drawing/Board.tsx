import { crossingOf } from '@kneewall/project';
import { type MouseEvent, useMemo, useState } from 'react';
import { useRoom } from '../look/useRoom.ts';
import { BoardButtons } from './BoardButtons.tsx';
import { BoardDrawing } from './BoardDrawing.tsx';
import { type Box, boardOf, boxRound, closer, withHandle } from './board.ts';
import { CornerHandle } from './CornerHandle.tsx';
import { placeFor, type Spot, spotOf } from './corners.ts';
import { snapped } from './snap.ts';
import type { DrawnPoints } from './usePoints.ts';

/** px: the board's most height, and from how far away an end or a side draws a corner to itself. */
const heightMost = 460;
const reachPx = 14;

/** The plan with one thing on it to draw: its corners are pulled, and new ones put where the board is touched. */
export function Board({ drawn, label }: { drawn: DrawnPoints; label: string }) {
  const [ref, { width }] = useRoom<HTMLElement>();
  const [view, setView] = useState<{ readonly times: number; readonly at: Spot | undefined }>({
    times: 1,
    at: undefined,
  });
  const [asked, ask] = useState(false);
  const { kept, points, around, chosen } = drawn;
  // While a corner is dragged the board stands still: it is laid out by what is kept.
  const whole = useMemo(
    (): Box =>
      boxRound([
        ...kept.map(spotOf),
        ...around.rooms.flatMap((r) => r.corners),
        ...around.ways.flatMap((w) => w.spots),
        ...(kept.length === 0 ? [spotOf(around.start)] : []),
      ]),
    [kept, around],
  );
  const board = boardOf(closer(whole, view.times, view.at), width, heightMost);
  const places = points.map((p) => board.put(spotOf(p)));
  const reach = reachPx / board.perMetre;
  const begun = kept.length < (around.closed ? 3 : 2);
  const adding = !drawn.barred && (asked || begun);
  const touch = (event: MouseEvent<SVGSVGElement>) => {
    if (!adding) return;
    const at = event.currentTarget.getBoundingClientRect();
    const spot = board.lift([event.clientX - at.left, event.clientY - at.top]);
    const after = placeFor(kept, spot, around.closed, reach);
    const beside = [kept[after], kept[after + 1]].filter((p) => p !== undefined);
    const { spot: to, end } = snapped(spot, { step: drawn.step, ends: around.ends, beside, reach });
    const height = end?.[2] ?? kept[after]?.[2] ?? around.start[2] ?? 0;
    drawn.add(after, around.closed ? to : [...to, height]);
  };
  const crossing = around.closed && points.length > 2 ? crossingOf(points.map(spotOf)) : undefined;
  return (
    <div>
      <figure className={`board ${adding ? 'adding' : ''}`} ref={ref} aria-label={`${label}, drawn in plan`}>
        {width > 0 && (
          <>
            <BoardDrawing board={board} drawn={drawn} crossing={crossing?.at} touch={touch} />
            {withHandle(places, chosen).map((i) => (
              <CornerHandle
                key={i}
                at={i}
                place={places[i] ?? [0, 0]}
                drawn={drawn}
                perMetre={board.perMetre}
                reach={reach}
              />
            ))}
          </>
        )}
      </figure>
      <BoardButtons
        adding={adding}
        begun={begun}
        barred={drawn.barred}
        times={view.times}
        ask={() => ask(!asked)}
        look={(times) => setView({ times, at: chosen === undefined ? view.at : spotOf(kept[chosen] ?? []) })}
      />
    </div>
  );
}
