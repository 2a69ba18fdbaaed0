import { corridor, corridorWalls } from '../../physics/passage/corridor.ts';
import type { Outline } from '../../physics/passage/index.ts';
import { box, far, narrowOf, reachOf, type Scene, sceneOf } from './scene.ts';

/** A square corner from above: a way `a` wide into one `b` wide. */
export const cornerScene = (a: number, b: number): Scene =>
  sceneOf(
    'plan',
    corridorWalls(a, b),
    (piece) => Math.min(a, b) - narrowOf(piece),
    (piece) => corridor(a, b, piece),
  );

/** A straight opening from above, `deep` m through its wall. */
export function straightScene(width: number, deep: number): Scene {
  const outlines: Outline[] = [box(-far, -deep, -width / 2, 0), box(width / 2, -deep, far, 0)];
  return sceneOf(
    'plan',
    outlines,
    (piece) => width - narrowOf(piece),
    (piece) => {
      const reach = reachOf(piece);
      return {
        bounds: { x0: -reach - width, x1: reach + width, y0: -deep - 2 * reach - 0.1, y1: 2 * reach + 0.1 },
        start: { x: 0, y: -deep - reach - 0.03, turn: Math.PI / 2 },
        goals: [{ x: 0, y: reach + 0.03, turn: Math.PI / 2 }],
      };
    },
  );
}

/** A door from above into a hall `hall` m wide that runs past it on both hands: the piece goes on along the hall. */
export function doorScene(width: number, deep: number, hall: number): Scene {
  const outlines: Outline[] = [
    box(-far, -deep, -width / 2, 0),
    box(width / 2, -deep, far, 0),
    box(-far, hall, far, hall + far),
  ];
  return sceneOf(
    'plan',
    outlines,
    (piece) => Math.min(width, hall) - narrowOf(piece),
    (piece) => {
      const reach = reachOf(piece);
      const wide = width / 2 + 2 * reach + 0.2;
      return {
        bounds: { x0: -wide, x1: wide, y0: -deep - 2 * reach - 0.2, y1: hall },
        start: { x: 0, y: -deep - reach - 0.03, turn: Math.PI / 2 },
        goals: [1, -1].map((hand) => ({ x: hand * (width / 2 + piece.a + 0.05), y: hall / 2, turn: 0 })),
      };
    },
  );
}
