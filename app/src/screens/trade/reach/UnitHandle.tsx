import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import type { Box } from './box.ts';
import type { UnitMove } from './useUnitMove.ts';

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The outdoor unit to take hold of: dragged, or moved by arrow keys; either way one act when it is let go. */
export function UnitHandle({
  box,
  per,
  move,
  name,
}: {
  /** px in the picture, from its upper left. */
  box: Box;
  per: number;
  move: UnitMove;
  name: string;
}) {
  const from = useRef<{
    readonly pointer: number;
    readonly at: readonly [number, number];
    readonly x: number;
    readonly y: number;
  }>(undefined);
  const [chosen, choose] = useState(false);
  const middle = (): readonly [number, number] => [box.x + box.width / 2, box.z + box.height / 2];
  const begin = (event: PointerEvent<HTMLButtonElement>) => {
    // A thumb that scrolls the page must not move the unit: by touch it is chosen first.
    const mayPull = event.button === 0 && !move.barred && (event.pointerType !== 'touch' || chosen);
    choose(true);
    if (!mayPull) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { pointer: event.pointerId, at: middle(), x: event.clientX, y: event.clientY };
  };
  const pull = (event: PointerEvent) => {
    const start = from.current;
    if (start?.pointer !== event.pointerId) return;
    const [dx, dy] = [event.clientX - start.x, event.clientY - start.y];
    if (dx !== 0 || dy !== 0) move.to([start.at[0] + dx / per, start.at[1] - dy / per]);
  };
  const done = (end: () => void) => () => {
    from.current = undefined;
    end();
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') done(move.giveUp)();
    const arrow = arrows[event.key];
    if (!arrow || move.barred) return;
    event.preventDefault();
    move.nudge(arrow, move.step * (event.shiftKey ? 10 : 1));
  };
  return (
    <button
      type="button"
      className={`unit-handle ${chosen ? 'chosen' : ''}`}
      aria-label={name}
      aria-pressed={chosen}
      onFocus={() => choose(true)}
      onPointerDown={begin}
      onPointerMove={pull}
      onPointerUp={done(move.keep)}
      onPointerCancel={done(move.giveUp)}
      onKeyDown={press}
      onKeyUp={(e) => arrows[e.key] && move.keep()}
      onBlur={() => {
        choose(false);
        done(move.keep)();
      }}
    />
  );
}
