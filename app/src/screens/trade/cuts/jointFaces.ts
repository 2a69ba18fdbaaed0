import type { TradeResults } from '@kneewall/engine';
import { type Face, type Flat, type Place, seen } from './foldedFaces.ts';

type Cut = Extract<TradeResults['materials']['cut'], { ok: true }>['value'];
export type JointPiece = Extract<Cut['joints'][number], { state: 'piece' }>;

/** What a picture needs of a piece between two ends. */
type Ended = { readonly piece: Pick<JointPiece['piece'], 'start' | 'end' | 'length' | 'offset'> };

/** Spots of a round end in the picture. */
const roundParts = 32;

/** Corners of an end about its middle, the same number for both ends, counter-clockwise from the right as one looks along. */
function rim(end: JointPiece['piece']['end'], z: number, [right, up]: readonly [number, number], n: number): Place[] {
  if (end.kind === 'round')
    return Array.from({ length: n }, (_, i): Place => {
      const a = (2 * Math.PI * (i + 0.5)) / n;
      return [right + (end.diameter / 2) * Math.cos(a), up + (end.diameter / 2) * Math.sin(a), z];
    });
  const [w, h] = [end.width / 2, end.height / 2];
  const corners: readonly (readonly [number, number])[] = [
    [w, h],
    [-w, h],
    [-w, -h],
    [w, -h],
  ];
  return Array.from({ length: n }, (_, i): Place => {
    const [x, y] = corners[Math.floor((4 * i) / n)] ?? [0, 0];
    return [right + x, up + y, z];
  });
}

/**
 * The walls of a piece between unit and duct, or of a reducer, as they are seen, those seen from within first, inside sizes, its middle at the
 * middle of the picture. `turn` and `tilt` as for a box: both 0 looks in at the unit's end.
 */
export function jointFaces({ piece }: Ended, turn: number, tilt: number): Face[] {
  const { start, end, length, offset } = piece;
  const n = start.kind === 'round' || end.kind === 'round' ? roundParts : 4;
  const half = [offset[0] / 2, offset[1] / 2] as const;
  const near = rim(start, -length / 2, [-half[0], -half[1]], n);
  const far = rim(end, length / 2, half, n);
  const flat = (p: Place): Flat => {
    const [x, y] = seen(p, turn, tilt);
    return [x, y];
  };
  const faces = near.flatMap((a, i): Face[] => {
    const [b, c, d] = [near[(i + 1) % n], far[(i + 1) % n], far[i]];
    if (!b || !c || !d) return [];
    const corners = [a, b, c, d].map(flat);
    return [{ side: String(i), inside: area(corners) < 0, corners, holes: [] }];
  });
  return [...faces.filter((f) => f.inside), ...faces.filter((f) => !f.inside)];
}

/** Signed, y downward: below 0 where the corners run against the clock on the picture, as a wall's do that is seen from within. */
const area = (corners: readonly Flat[]): number =>
  corners.reduce((sum, [x, y], i) => {
    const [x2, y2] = corners[(i + 1) % corners.length] ?? [x, y];
    return sum + x * y2 - x2 * y;
  }, 0);

/** The largest outside measure by which a picture is scaled, m. */
export const jointReach = ({ piece }: Ended): number => {
  const wide = [piece.start, piece.end].map((e) =>
    e.kind === 'round' ? [e.diameter, e.diameter] : [e.width, e.height],
  );
  const most = (k: 0 | 1): number => Math.max(...wide.map((w) => w[k] ?? 0)) + Math.abs(piece.offset[k]);
  return Math.hypot(most(0), most(1), piece.length);
};
