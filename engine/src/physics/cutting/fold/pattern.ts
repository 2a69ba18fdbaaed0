/** m in the plane of a flat piece: x to the right, y up, from its lower left corner. */
export type Spot = readonly [x: number, y: number];

/**
 * A line of a flat piece. `cut`: right through. `groove`: where the board is cut to fold, on the side that is seen; it is
 * `width` wide on that side and the line is its middle, about which it folds. `fold`: a bend of sheet metal. `lap`: from
 * here to the edge, half the board or the bare facing goes over or under its neighbour. `centre`: of a hole.
 */
export type FlatLine = {
  readonly kind: 'cut' | 'groove' | 'fold' | 'lap' | 'centre';
  readonly from: Spot;
  readonly to: Spot;
  readonly width?: number;
};

/** A hole: round, or a rectangle about its middle. */
export type FlatHole = {
  readonly id: string;
  readonly centre: Spot;
  readonly shape:
    | { readonly kind: 'round'; readonly diameter: number }
    | { readonly kind: 'rectangle'; readonly width: number; readonly height: number };
};

/** A part of a flat piece that becomes a side: `inside` is what of it is seen from within when it is folded. */
export type FlatPanel = {
  readonly name: string;
  readonly from: Spot;
  readonly to: Spot;
  readonly inside: { readonly from: Spot; readonly to: Spot };
};

/** A length to write beside the drawing, measured between two spots. */
export type FlatMeasure = {
  readonly from: Spot;
  readonly to: Spot;
  readonly length: number;
  /** `edge`: from the left edge to a line; `step`: from line to line; `whole`; `check`: corner to corner, to prove it square. */
  readonly of: 'edge' | 'step' | 'whole' | 'check' | 'hole';
};

/** A flat piece, ready to be drawn, packed and cut: seen from the side that is cut, which is the inside when it is folded. */
export type FlatPiece = {
  readonly id: string;
  /** Closed: the last corner joins the first. Counter-clockwise. */
  readonly outline: readonly Spot[];
  readonly size: { readonly width: number; readonly height: number };
  readonly lines: readonly FlatLine[];
  readonly holes: readonly FlatHole[];
  readonly panels: readonly FlatPanel[];
  readonly measures: readonly FlatMeasure[];
};

export const rectangle = (width: number, height: number): Spot[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

export const measure = (from: Spot, to: Spot, of: FlatMeasure['of']): FlatMeasure => ({
  from,
  to,
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
  of,
});

/** Two short lines through a hole's middle. */
export function centreLines([x, y]: Spot, reach: number): FlatLine[] {
  return [
    { kind: 'centre', from: [x - reach, y], to: [x + reach, y] },
    { kind: 'centre', from: [x, y - reach], to: [x, y + reach] },
  ];
}

/** What a hole takes in each direction from its middle. */
export const reachOf = ({ shape }: Pick<FlatHole, 'shape'>): { readonly x: number; readonly y: number } =>
  shape.kind === 'round'
    ? { x: shape.diameter / 2, y: shape.diameter / 2 }
    : { x: shape.width / 2, y: shape.height / 2 };

/** Area in m² within the outline, without the holes. */
export function areaOf({ outline, holes }: Pick<FlatPiece, 'outline' | 'holes'>): number {
  const whole = outline.reduce((sum, [x, y], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length] ?? [x, y];
    return sum + (x * y2 - x2 * y) / 2;
  }, 0);
  const out = holes.reduce((sum, { shape }) => {
    return sum + (shape.kind === 'round' ? (Math.PI * shape.diameter ** 2) / 4 : shape.width * shape.height);
  }, 0);
  return Math.abs(whole) - out;
}
