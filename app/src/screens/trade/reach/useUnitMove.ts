import { type Answer, type Asked, answerAt, type Wall, waysOn } from '@kneewall/engine';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useServices, useSession, useUnits } from '../../../services.ts';
import { moveStep, nudged, type On, placeChanges, placeUnder } from './unitMove.ts';

/**
 * The outdoor unit on one wall: where it is, or is being moved to, and at once what that place means. Letting go writes it
 * as one act, giving up writes nothing.
 */
export function useUnitMove(wall: Wall, asked: Asked, meant: On | undefined) {
  const { session } = useServices();
  const step = moveStep[useUnits()];
  const barred = useSession((s) => s.barred !== undefined);
  const ways = useMemo(() => waysOn(wall), [wall]);
  const moving = useRef<On>(undefined);
  const [draft, setDraft] = useState<On>();
  const here = meant?.wall === wall.id ? meant : undefined;
  const [standing, setStanding] = useState(here);
  // Whatever changes the place meanwhile, an undo for one, ends the move.
  const key = JSON.stringify(here);
  useEffect(() => {
    moving.current = undefined;
    setDraft(undefined);
    setStanding(key === undefined ? undefined : (JSON.parse(key) as On));
  }, [key]);
  const place = draft ?? standing;
  const answer: Answer | undefined = useMemo(
    () => (place ? answerAt(wall, ways, asked, place) : undefined),
    [wall, ways, asked, place],
  );
  const show = (next: On | undefined): void => {
    moving.current = next;
    setDraft(next);
  };
  const from = (): On =>
    moving.current ?? here ?? { wall: wall.id, stands: 'wall', x: 0, z: asked.unit.baseLeast, out: 0 };
  const keep = (): void => {
    const next = moving.current;
    if (!next) return;
    moving.current = undefined;
    if (JSON.stringify(next) === key) setDraft(undefined);
    else session.change(placeChanges(next));
  };
  return {
    place,
    answer,
    barred,
    step,
    isMoving: draft !== undefined,
    /** Brings the unit's middle to a spot of the picture, in m. */
    to: (spot: readonly [number, number]): void => show(placeUnder(wall, asked.unit, from(), spot, step)),
    nudge: (by: readonly [number, number], far: number): void => show(nudged(wall, asked.unit, from(), by, far)),
    keep,
    giveUp: (): void => show(undefined),
  };
}

export type UnitMove = ReturnType<typeof useUnitMove>;
