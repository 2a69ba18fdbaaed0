import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { type Spot, spotOf } from './corners.ts';
import type { DrawnPoints } from './usePoints.ts';

type Props = {
  readonly at: number;
  readonly place: Spot;
  readonly drawn: DrawnPoints;
  readonly perMetre: number;
  readonly reach: number;
};

const arrows: Readonly<Record<string, Spot>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** A corner to take hold of: dragged, or moved by arrow keys; either way one act when it is let go. */
export function CornerHandle({ at, place, drawn, perMetre, reach }: Props) {
  const from = useRef<{ readonly pointer: number; readonly x: number; readonly y: number; readonly spot: Spot }>(
    undefined,
  );
  const isChosen = drawn.chosen === at;
  const begin = (event: PointerEvent<HTMLButtonElement>) => {
    drawn.choose(at);
    // A thumb that scrolls the page must not move a corner: by touch it is chosen first.
    if (event.button !== 0 || drawn.barred || (event.pointerType === 'touch' && !isChosen)) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, spot: spotOf(drawn.nowAt(at)) };
  };
  const pull = (event: PointerEvent) => {
    const start = from.current;
    if (start?.pointer !== event.pointerId) return;
    const [dx, dy] = [event.clientX - start.x, event.clientY - start.y];
    if (dx === 0 && dy === 0) return;
    drawn.drag(at, [start.spot[0] + dx / perMetre, start.spot[1] - dy / perMetre], reach);
  };
  const done = (end: () => void) => () => {
    from.current = undefined;
    end();
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') done(drawn.giveUp)();
    if (drawn.barred) return;
    if (event.key === 'Delete') drawn.remove(at);
    const arrow = arrows[event.key];
    if (!arrow) return;
    event.preventDefault();
    const far = drawn.step * (event.shiftKey ? 10 : 1);
    drawn.nudge(at, [arrow[0] * far, arrow[1] * far]);
  };
  return (
    <button
      type="button"
      className={`corner ${isChosen ? 'chosen' : ''}`}
      style={{ left: place[0], top: place[1] }}
      aria-label={`Corner ${at + 1}`}
      aria-pressed={isChosen}
      onFocus={() => drawn.choose(at)}
      onPointerDown={begin}
      onPointerMove={pull}
      onPointerUp={done(drawn.letGo)}
      onPointerCancel={done(drawn.giveUp)}
      onKeyDown={press}
      onKeyUp={(e) => arrows[e.key] && drawn.letGo()}
      onBlur={done(drawn.letGo)}
    >
      <span>{at + 1}</span>
    </button>
  );
}
