import type { BoardBox, FlatPiece, Spot, UnfoldedBox } from '@kneewall/engine/physics';

/** Where a flat spot ends up across the duct: x to the right, y up; a quarter turn more for each corner. */
type Turn = { readonly quarters: number; readonly x: number; readonly y: number };

const turned = (q: number, [x, y]: Spot): Spot =>
  [
    [x, y],
    [-y, x],
    [-x, -y],
    [y, -x],
  ][((q % 4) + 4) % 4] as unknown as Spot;

const put = (t: Turn, p: Spot): Spot => {
  const [x, y] = turned(t.quarters, p);
  return [x + t.x, y + t.y];
};

/** The turn by so many quarters that brings `from` to `to`. */
const bringing = (quarters: number, from: Spot, to: Spot): Turn => {
  const [x, y] = turned(quarters, from);
  return { quarters, x: to[0] - x, y: to[1] - y };
};

export type Folded = {
  /** Inside corners: where each panel begins, and where the last one ends. */
  readonly corners: readonly Spot[];
  /** Inside lengths of the four sides in order. */
  readonly sides: readonly number[];
  /** Holes: place across the duct and along it. */
  readonly holes: readonly { readonly id: string; readonly at: readonly [number, number, number] }[];
  /** m between the two inside edges of each corner after folding. */
  readonly openCorner: number;
};

/** Upright lines of one kind, from the left. */
const upright = (piece: FlatPiece, kind: 'groove' | 'lap') =>
  piece.lines
    .filter((l) => l.kind === kind && l.from[0] === l.to[0])
    .map((l) => ({ x: l.from[0], width: l.width ?? 0 }))
    .sort((a, b) => a.x - b.x);

/** Folds the pieces of one section into a tube, the first corner at the top left, by their drawn lines alone. */
export function refold(pieces: readonly FlatPiece[], height: number): Folded {
  const corners: Spot[] = [[0, height]];
  const sides: number[] = [];
  const holes: { id: string; at: [number, number, number] }[] = [];
  let openCorner = 0;
  // The first panel hangs down on the left.
  let quarters = 3;
  for (const piece of pieces) {
    const grooves = upright(piece, 'groove');
    const laps = upright(piece, 'lap');
    const start = laps[0]?.x ?? Number.NaN;
    const half = laps[1]?.x ?? Number.NaN;
    let from = start;
    let turn = bringing(quarters, [from, 0], corners.at(-1) ?? [0, 0]);
    for (const g of [...grooves, undefined]) {
      const to = g ? g.x - g.width / 2 : half;
      const reach = g ? g.x : piece.size.width;
      for (const h of piece.holes)
        if (h.centre[0] > from && h.centre[0] < reach)
          holes.push({ id: h.id, at: [...put(turn, [h.centre[0], 0]), h.centre[1]] });
      sides.push(to - from);
      const end = put(turn, [to, 0]);
      corners.push(end);
      quarters++;
      if (!g) continue;
      // The panel turns about the bottom of the groove, half as deep as the groove is wide.
      const axis: Spot = [g.x, -g.width / 2];
      turn = bringing(quarters, axis, put(turn, axis));
      from = g.x + g.width / 2;
      const next = put(turn, [from, 0]);
      openCorner = Math.max(openCorner, Math.hypot(next[0] - end[0], next[1] - end[1]));
    }
  }
  return { corners, sides, holes, openCorner };
}

/** Where an opening of a side was asked for, in the same coordinates. */
export function wanted(box: BoardBox): Map<string, readonly [number, number, number]> {
  const { width: w, height: h } = box;
  return new Map(
    box.openings.map((o) => {
      const at = {
        left: [0, o.across],
        right: [w, o.across],
        bottom: [o.across, 0],
        top: [o.across, h],
        start: [],
        end: [],
      }[o.side];
      return [o.id, [at[0] ?? 0, at[1] ?? 0, o.along]];
    }),
  );
}

/** Largest miss in m of a box that is folded again: corners against the inside sizes, closing, holes. */
export function missOf(box: BoardBox, flat: UnfoldedBox, capDepth: number): number {
  const tube = flat.pieces.filter((p) => p.panels[0]?.name !== 'cap');
  const panels = tube.reduce((n, p) => n + p.panels.length, 0);
  const sections = panels / 4;
  const perSection = tube.length / sections;
  const [w, h] = [box.width, box.height];
  const corners: Spot[] = [
    [0, h],
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const asked = wanted(box);
  let miss = 0;
  let along = box.caps.start ? -capDepth : 0;
  let seen = 0;
  for (let s = 0; s < sections; s++) {
    const pieces = tube.slice(s * perSection, (s + 1) * perSection);
    const folded = refold(pieces, h);
    corners.forEach((c, i) => {
      const at = folded.corners[i] ?? [Number.NaN, Number.NaN];
      miss = Math.max(miss, Math.hypot(at[0] - c[0], at[1] - c[1]));
    });
    miss = Math.max(miss, folded.openCorner);
    for (const hole of folded.holes) {
      const to = asked.get(hole.id) ?? [Number.NaN, Number.NaN, Number.NaN];
      miss = Math.max(miss, Math.hypot(hole.at[0] - to[0], hole.at[1] - to[1], hole.at[2] + along - to[2]));
      seen++;
    }
    // What goes into the next section is the strip beyond the uppermost level lap, where there is a next section.
    const [piece] = pieces;
    const laps = piece?.lines.filter((l) => l.kind === 'lap' && l.from[1] === l.to[1]).map((l) => l.from[1]) ?? [];
    along += s < sections - 1 ? Math.max(...laps) : (piece?.size.height ?? 0);
  }
  const end = box.length + (box.caps.end ? capDepth : 0);
  return Math.max(miss, Math.abs(along - end), seen === box.openings.length ? 0 : 1);
}
