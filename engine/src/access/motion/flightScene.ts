import type { Outline } from '../../physics/passage/index.ts';
import { box, far, narrowOf, reachOf, type Scene, sceneOf } from './scene.ts';

/** A flight from the side, m: what it rises in all, the pitch of its nosings, free height above them, rooms at both ends. */
export type Flight = {
  readonly storey: number;
  readonly rise: number;
  readonly going: number;
  /** Upright over the nosings, under a soffit that slopes as they do. */
  readonly headroom: number;
  readonly below: number;
};

/** Nosings count as one slope and the soffit as another, so that steps carry and never help. The piece goes up lengthwise. */
export function flightScene({ storey, rise, going, headroom, below }: Flight): Scene {
  const run = (storey * going) / rise;
  const lip = Math.min(headroom, below);
  const outlines: Outline[] = [
    box(-far, -far, far, 0),
    [
      [0, -far],
      [run, -far],
      [run, storey],
      [0, 0],
    ],
    box(run, -far, far, storey),
    box(-far, below, 0, below + far),
    [
      [0, lip],
      [run, storey + lip],
      [run, storey + below + far],
      [0, storey + below + far],
    ],
    box(run, storey + below, far, storey + below + far),
  ];
  // Square to the slope there is less than upright.
  const clear = headroom * Math.cos(Math.atan2(rise, going));
  return sceneOf(
    'flight',
    outlines,
    (piece) => Math.min(clear, below) - narrowOf(piece),
    (piece) => {
      const reach = 2 * reachOf(piece) + 0.2;
      return {
        bounds: { x0: -reach, x1: run + reach, y0: 0, y1: storey + below },
        start: { x: -reach + 0.05, y: below / 2, turn: 0 },
        goals: [{ x: run + reach - 0.05, y: storey + below / 2, turn: 0 }],
      };
    },
  );
}
