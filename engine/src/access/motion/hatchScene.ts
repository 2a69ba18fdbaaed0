import type { Outline, Piece, Pose } from '../../physics/passage/index.ts';
import { box, far, hair, narrowOf, reachOf, type Scene, sceneOf } from './scene.ts';

/** A hatch from the side, m: its opening in this plane, the floor it goes through, the room below, what is above. */
export type HatchSide = {
  readonly slot: number;
  readonly framing: number;
  readonly below: number;
  /** Free height over the lower edge; none where nobody measured it, and then nothing is above. */
  readonly headroom?: number | undefined;
  /** Degrees by which the roof rises over the slot, to the right; its ridge above the joists. */
  readonly slope: number;
  readonly ridge?: number | undefined;
};

const tanOf = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** The roof: a slope up to the right from the lower edge, closed at the ridge or level over the upper edge; or level; or nothing. */
function roofOver({ slot, headroom, slope, ridge }: HatchSide): {
  readonly outlines: Outline[];
  readonly peak?: number;
} {
  if (headroom === undefined) return { outlines: [] };
  const tan = tanOf(slope);
  if (tan < 1e-3) return { outlines: [box(-far, headroom, far, headroom + far)] };
  const at = (x: number): number => headroom + tan * (x + slot / 2);
  const top = Math.max(ridge ?? at(slot / 2), headroom);
  const rising: Outline = [
    [-far, at(-far)],
    [far, at(far)],
    [far, at(far) + far],
    [-far, at(far) + far],
  ];
  if (ridge === undefined || top <= headroom) return { outlines: [rising, box(-far, top, far, top + far)] };
  const peak = (top - headroom) / tan - slot / 2;
  const falling: Outline = [
    [peak - far, top + tan * far],
    [peak + far, top - tan * far],
    [peak + far, top + tan * far + far],
    [peak - far, top + tan * far + far],
  ];
  return { outlines: [rising, falling], peak };
}

/** A hatch in a plane that stands upright along or across it. The piece comes from below and lies down beside the opening. */
export function hatchScene(side: HatchSide): Scene {
  const { slot, framing, below, headroom } = side;
  const roof = roofOver(side);
  const floor = -framing - below;
  const outlines: Outline[] = [
    box(-far, -framing, -slot / 2, 0),
    box(slot / 2, -framing, far, 0),
    box(-far, floor - far, far, floor),
    ...roof.outlines,
  ];
  return sceneOf(
    'hatch',
    outlines,
    (piece) => Math.min(slot, headroom === undefined ? slot : ceilingOf(side)) - narrowOf(piece),
    (piece) => {
      const reach = reachOf(piece);
      const wide = slot / 2 + 2 * reach + 0.1;
      return {
        bounds: {
          x0: -wide,
          x1: Math.max(wide, (roof.peak ?? 0) + reach),
          y0: floor,
          y1: headroom === undefined ? 2 * reach + 0.1 : ceilingOf(side),
        },
        start: { x: 0, y: -framing - Math.max(piece.b + hair, below / 2), turn: 0 },
        goals: restingPlaces(piece, slot),
        guides: straightUp(piece, side),
      };
    },
  );
}

const ceilingOf = ({ slot, headroom = 0, slope, ridge }: HatchSide): number =>
  Math.max(headroom, ridge ?? headroom + tanOf(slope) * slot);

/** Upright through the middle and laid down on either hand, each of its sides leading; or level all the way. */
function straightUp(piece: Piece, { slot, framing, below }: HatchSide): Pose[][] {
  const start = -framing - Math.max(piece.b + hair, below / 2);
  const { a, b } = piece;
  return restingPlaces(piece, slot).flatMap(({ x, y, turn }) =>
    [0, Math.PI / 2].map((up): Pose[] => {
      const above = reachOf(piece) + hair;
      const straight = up === turn ? (up === 0 ? b : a) + hair : above;
      return [
        { x: 0, y: start, turn: 0 },
        { x: 0, y: start, turn: up },
        { x: 0, y: straight, turn: up },
        { x, y: straight, turn: up },
        { x, y: straight, turn },
        { x, y, turn },
      ];
    }),
  );
}

/** Flat on either side, beside the opening or a step further on either hand. */
function restingPlaces({ a, b }: Piece, slot: number): Pose[] {
  const flat = (half: number, high: number, turn: number): Pose[] =>
    [1, -1].map((hand) => ({ x: hand * (slot / 2 + half + 0.02), y: high + hair, turn }));
  return [...flat(a, b, 0), ...flat(b, a, Math.PI / 2)];
}
