/** A point, m. */
export type Point = readonly [number, number];
/** A convex outline, counterclockwise, m. */
export type Outline = readonly Point[];
/** Where a piece stands: its middle, m, and its turn from the x axis, radians. */
export type Pose = { readonly x: number; readonly y: number; readonly turn: number };
/** A piece in the plane: half its length and half its width, m. */
export type Piece = { readonly a: number; readonly b: number };

/** Convex outlines as flat arrays: corners, outward normals and their offsets, and where each outline begins. */
export type Obstacles = {
  readonly starts: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  readonly off: Float64Array;
};

/** Why an outline is no obstacle, and at which of its corners. */
export type BadOutline = {
  readonly outline: number;
  readonly corner: number;
  readonly why: 'crossing' | 'clockwise' | 'flat';
};

const turnAt = (o: Outline, i: number): number => {
  const n = o.length;
  const [ax, ay] = o[(i + n - 1) % n] as Point;
  const [bx, by] = o[i] as Point;
  const [cx, cy] = o[(i + 1) % n] as Point;
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
};

/** The first corner at which outlines are not convex and counterclockwise; nothing where all are. Numbers that are not finite are `flat`. */
export function badOutline(outlines: readonly Outline[]): BadOutline | undefined {
  for (const [outline, o] of outlines.entries()) {
    const finite = o.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
    if (o.length < 3 || !finite) return { outline, corner: 0, why: 'flat' };
    let area = 0;
    for (const [i, [x, y]] of o.entries()) {
      const [u, v] = o[(i + 1) % o.length] as Point;
      area += x * v - u * y;
    }
    const corner = o.findIndex((_, i) => turnAt(o, i) <= 0);
    if (corner >= 0) return { outline, corner, why: area < 0 ? 'clockwise' : area === 0 ? 'flat' : 'crossing' };
    // All corners turn left: once round is convex, more often crosses itself.
    let turned = 0;
    for (let i = 0; i < o.length; i++) {
      const [ax, ay] = o[i] as Point;
      const [bx, by] = o[(i + 1) % o.length] as Point;
      const [cx, cy] = o[(i + 2) % o.length] as Point;
      turned += Math.atan2(
        (bx - ax) * (cy - by) - (by - ay) * (cx - bx),
        (bx - ax) * (cx - bx) + (by - ay) * (cy - by),
      );
    }
    if (turned > 2 * Math.PI + 1e-6) return { outline, corner: 0, why: 'crossing' };
  }
  return undefined;
}

/** Outlines laid out for the kernels. Throws where one is bad: callers ask `badOutline` about what a person drew. */
export function obstaclesOf(outlines: readonly Outline[]): Obstacles {
  const bad = badOutline(outlines);
  if (bad) throw new Error(`assert: outline ${bad.outline} is ${bad.why} at corner ${bad.corner}`);
  const count = outlines.reduce((n, o) => n + o.length, 0);
  const of = () => new Float64Array(count);
  const made = { starts: new Int32Array(outlines.length + 1), x: of(), y: of(), nx: of(), ny: of(), off: of() };
  let k = 0;
  for (const [j, o] of outlines.entries()) {
    made.starts[j] = k;
    for (const [i, [x, y]] of o.entries()) {
      const [u, v] = o[(i + 1) % o.length] as Point;
      const long = Math.hypot(u - x, v - y);
      made.x[k] = x;
      made.y[k] = y;
      made.nx[k] = (v - y) / long;
      made.ny[k] = (x - u) / long;
      made.off[k] = (made.nx[k] as number) * x + (made.ny[k] as number) * y;
      k++;
    }
  }
  made.starts[outlines.length] = k;
  return made;
}
