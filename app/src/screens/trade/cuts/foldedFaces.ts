import type { TradeResults } from '@kneewall/engine';

type Cut = Extract<TradeResults['materials']['cut'], { ok: true }>['value'];
export type FoldedBox = Cut['boxes'][number];
type Opening = FoldedBox['box']['openings'][number];
export type Place = readonly [x: number, y: number, z: number];
export type Flat = readonly [number, number];

/** A face: cm on the picture, y downward, and its holes; `inside` where it is seen from within, through an open end. */
export type Face = {
  readonly side: string;
  readonly inside: boolean;
  readonly corners: readonly Flat[];
  readonly holes: readonly { readonly id: string; readonly rim: readonly Flat[]; readonly middle: Flat }[];
};

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Turned about the upright axis, tilted towards the viewer, seen from afar. Also how near it is. */
export function seen([x, y, z]: Place, turn: number, tilt: number): readonly [number, number, number] {
  const [s, c] = [Math.sin(radians(turn)), Math.cos(radians(turn))];
  const [across, deep] = [x * c - z * s, z * c + x * s];
  const [st, ct] = [Math.sin(radians(tilt)), Math.cos(radians(tilt))];
  return [100 * across, -100 * (y * ct + deep * st), y * st - deep * ct];
}

/**
 * The faces of a folded box that can be seen, those seen from within first, outside sizes, the middle of the box at the middle of the picture. `turn` and
 * `tilt` in degrees: both 0 looks in at the near end, from there the viewer goes to the left and up. An open end is no face: it is seen through.
 */
export function foldedFaces({ box, flat }: Pick<FoldedBox, 'box' | 'flat'>, turn: number, tilt: number): Face[] {
  const { width, height, length } = flat.outside;
  const [w, h, l] = [width / 2, height / 2, length / 2];
  const wall = (length - box.length) / Math.max(1, Number(box.caps.start) + Number(box.caps.end));
  const start = -l + (box.caps.start ? wall : 0);
  const at = (o: Opening, u: number, v: number): Place => holePlace(o.side, [w, h, l], box, start, u, v);
  const faces: readonly {
    readonly side: Opening['side'];
    readonly there: boolean;
    readonly corners: readonly Place[];
  }[] = [
    {
      side: 'left',
      there: true,
      corners: [
        [-w, -h, -l],
        [-w, -h, l],
        [-w, h, l],
        [-w, h, -l],
      ],
    },
    {
      side: 'right',
      there: true,
      corners: [
        [w, -h, -l],
        [w, h, -l],
        [w, h, l],
        [w, -h, l],
      ],
    },
    {
      side: 'bottom',
      there: true,
      corners: [
        [-w, -h, -l],
        [w, -h, -l],
        [w, -h, l],
        [-w, -h, l],
      ],
    },
    {
      side: 'top',
      there: true,
      corners: [
        [-w, h, -l],
        [-w, h, l],
        [w, h, l],
        [w, h, -l],
      ],
    },
    {
      side: 'start',
      there: box.caps.start,
      corners: [
        [-w, -h, -l],
        [-w, h, -l],
        [w, h, -l],
        [w, -h, -l],
      ],
    },
    {
      side: 'end',
      there: box.caps.end,
      corners: [
        [-w, -h, l],
        [w, -h, l],
        [w, h, l],
        [-w, h, l],
      ],
    },
  ];
  const flatten = (p: Place): Flat => {
    const [x, y] = seen(p, turn, tilt);
    return [x, y];
  };
  const put = faces.map((f) => {
    const nearness = f.corners.reduce((a, p) => a + seen(p, turn, tilt)[2], 0);
    return { ...f, looks: nearness > 1e-9, away: nearness < -1e-9 };
  });
  const seenThrough = put.some((f) => !f.there && f.looks);
  const face = ({ side, corners }: (typeof put)[number], inside: boolean): Face => ({
    side,
    inside,
    corners: corners.map(flatten),
    holes: box.openings
      .filter((o) => o.side === side)
      .map((o) => ({
        id: o.id,
        rim: rimOf(o).map(([u, v]) => flatten(at(o, u, v))),
        middle: flatten(at(o, o.across, o.along)),
      })),
  });
  // From afar a face of a box about the middle looks at the viewer where its middle is nearer than the box's.
  return [
    ...put.filter((f) => f.there && f.away && seenThrough).map((f) => face(f, true)),
    ...put.filter((f) => f.there && f.looks).map((f) => face(f, false)),
  ];
}

/** Points of a hole's rim in its side: across, along. */
function rimOf({ across, along, shape }: Opening): Flat[] {
  if (shape.kind === 'rectangle') {
    const [a, b] = [shape.width / 2, shape.height / 2];
    return [
      [across - a, along - b],
      [across + a, along - b],
      [across + a, along + b],
      [across - a, along + b],
    ];
  }
  return Array.from({ length: 40 }, (_, i): Flat => {
    const angle = (i * Math.PI) / 20;
    return [across + (shape.diameter / 2) * Math.cos(angle), along + (shape.diameter / 2) * Math.sin(angle)];
  });
}

/** Where a spot of a side stands: `u` across, `v` along, m inside; on the outer face. */
function holePlace(
  side: Opening['side'],
  [w, h, l]: Place,
  box: FoldedBox['box'],
  start: number,
  u: number,
  v: number,
): Place {
  const [x, y, z] = [u - box.width / 2, u - box.height / 2, start + v];
  if (side === 'left') return [-w, y, z];
  if (side === 'right') return [w, y, z];
  if (side === 'bottom') return [x, -h, z];
  if (side === 'top') return [x, h, z];
  return [x, v - box.height / 2, side === 'end' ? l : -l];
}
