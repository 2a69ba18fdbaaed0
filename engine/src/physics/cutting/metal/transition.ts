import { type FlatLine, type FlatPiece, measure, type Spot } from '../fold/pattern.ts';
import { Checking, type CutProblem } from '../problem.ts';

/** m; z along the duct. */
export type Place = readonly [x: number, y: number, z: number];

/** An end of a transition, in a plane across the duct: a rectangle or a circle about its middle. */
export type TransitionEnd =
  | { readonly kind: 'rectangle'; readonly width: number; readonly height: number }
  | { readonly kind: 'round'; readonly diameter: number };

/** From one end to another, `length` m further on, whose middle lies `offset` m to the right and up, looking along it. */
export type Transition = {
  readonly id: string;
  readonly start: TransitionEnd;
  readonly end: TransitionEnd;
  readonly length: number;
  readonly offset: readonly [right: number, up: number];
  /** Straight pieces in a quarter of a circle: more is nearer to round. */
  readonly parts: number;
  /** Left beyond the first edge for the seam; lies on the last side. */
  readonly seam: number;
};

export type FlatTransition = {
  readonly piece?: FlatPiece;
  /** Every triangle flat and as it stands, corner by corner: what the folded piece has to come back to. */
  readonly triangles: readonly { readonly flat: readonly Spot[]; readonly stands: readonly Place[] }[];
  /** m by which chords of a round end fall short of the circle. */
  readonly sag: number;
  readonly problems: readonly CutProblem[];
};

/** Corners of an end, counter-clockwise, in four groups: of a rectangle one each, of a circle a quarter's each. */
function quarters(end: TransitionEnd, z: number, [dx, dy]: readonly [number, number], parts: number): Place[][] {
  return [0, 1, 2, 3].map((q) => {
    if (end.kind === 'rectangle') {
      const [sx, sy] = [
        [1, 1],
        [-1, 1],
        [-1, -1],
        [1, -1],
      ][q] ?? [1, 1];
      return [[dx + ((sx ?? 1) * end.width) / 2, dy + ((sy ?? 1) * end.height) / 2, z]];
    }
    return Array.from({ length: parts + 1 }, (_, i): Place => {
      const a = ((q + i / parts) * Math.PI) / 2;
      return [dx + (end.diameter / 2) * Math.cos(a), dy + (end.diameter / 2) * Math.sin(a), z];
    });
  });
}

type Step = 'start' | 'end';

/** The order in which triangles go around: within a quarter along the end that has several corners, then to the next quarter. */
function around(a: Place[][], b: Place[][]): { low: Place[]; high: Place[]; steps: Step[] } {
  const low: Place[] = [];
  const high: Place[] = [];
  const steps: Step[] = [];
  for (let q = 0; q < 4; q++) {
    const [pa, pb] = [a[q] ?? [], b[q] ?? []];
    if (q > 0) steps.push('start', 'end');
    low.push(...pa);
    high.push(...pb);
    // Two round ends go on together, so that the triangles stay narrow.
    for (let i = 1; i < Math.max(pa.length, pb.length); i++) {
      if (i < pa.length) steps.push('start');
      if (i < pb.length) steps.push('end');
    }
  }
  steps.push('start', 'end');
  return { low: [...low, low[0] ?? [0, 0, 0]], high: [...high, high[0] ?? [0, 0, 0]], steps };
}

const apart = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The spot at those true lengths from two others, on the right as one goes from `p` to `q`. */
function beyond(p: Spot, q: Spot, fromP: number, fromQ: number): Spot {
  const base = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const along = (fromP ** 2 - fromQ ** 2 + base ** 2) / (2 * base);
  const off = Math.sqrt(Math.max(0, fromP ** 2 - along ** 2));
  const [ux, uy] = [(q[0] - p[0]) / base, (q[1] - p[1]) / base];
  return [p[0] + along * ux + off * uy, p[1] + along * uy - off * ux];
}

/** Lays the triangles flat one after the other, each on the edge it shares with the last. */
function develop(low: readonly Place[], high: readonly Place[], steps: readonly Step[]) {
  const origin: Place = [0, 0, 0];
  const at = (list: readonly Place[], i: number): Place => list[i] ?? origin;
  let [i, j] = [0, 0];
  const bottom: Spot[] = [[0, 0]];
  const top: Spot[] = [[0, apart(at(low, 0), at(high, 0))]];
  const triangles: { flat: Spot[]; stands: Place[] }[] = [];
  for (const step of steps) {
    const [p, q]: readonly [Spot, Spot] = [bottom[i] ?? [0, 0], top[j] ?? [0, 0]];
    const next = step === 'start' ? at(low, i + 1) : at(high, j + 1);
    const spot = beyond(p, q, apart(at(low, i), next), apart(at(high, j), next));
    // Where two quarters of a circle meet there is nothing between.
    if (apart(step === 'start' ? at(low, i) : at(high, j), next) > 1e-12)
      triangles.push({ flat: [p, q, spot], stands: [at(low, i), at(high, j), next] });
    if (step === 'start') {
      bottom.push(spot);
      i++;
    } else {
      top.push(spot);
      j++;
    }
  }
  return { bottom, top, triangles };
}

function checked(t: Transition): Checking {
  const check = new Checking();
  check.positive(['length'], t.length);
  check.atLeastNought(['seam'], t.seam);
  for (const name of ['start', 'end'] as const) {
    const end = t[name];
    if (end.kind === 'round') check.positive([name, 'diameter'], end.diameter);
    else for (const k of ['width', 'height'] as const) check.positive([name, k], end[k]);
  }
  for (const k of [0, 1] as const)
    if (!Number.isFinite(t.offset[k])) check.say('not-finite', ['offset', k], t.offset[k]);
  if (check.count(['parts'], t.parts) && t.parts > 200) check.say('too-many', ['parts'], t.parts, { max: 200 });
  return check;
}

/** Lines where the piece is bent: between neighbouring triangles that do not stand in one plane. */
function foldsOf(triangles: readonly { flat: readonly Spot[]; stands: readonly Place[] }[]): FlatLine[] {
  return triangles.slice(1).flatMap((t, n): FlatLine[] => {
    const before = triangles[n];
    const [a, b, c] = t.stands;
    const opposite = before?.stands.find((p) => a && b && apart(p, a) > 1e-12 && apart(p, b) > 1e-12);
    const [from, to] = t.flat;
    if (!a || !b || !c || !opposite || !from || !to || flush(a, b, c, opposite)) return [];
    return [{ kind: 'fold', from, to }];
  });
}

function flush(a: Place, b: Place, c: Place, d: Place): boolean {
  const minus = (p: Place): Place => [p[0] - a[0], p[1] - a[1], p[2] - a[2]];
  const [u, v, w] = [minus(b), minus(c), minus(d)];
  const volume =
    u[0] * (v[1] * w[2] - v[2] * w[1]) - u[1] * (v[0] * w[2] - v[2] * w[0]) + u[2] * (v[0] * w[1] - v[1] * w[0]);
  return Math.abs(volume) < 1e-9 * Math.hypot(...u) * Math.hypot(...v) * Math.hypot(...w);
}

/**
 * A straight transition of sheet metal flat, by triangles of true length: rectangle or circle to rectangle or circle, tapered
 * and offset. Seen from the inside, the start below. m, of the middle of the sheet; thickness and bends are not taken off. A round end is a polygon of 4 x `parts`
 * corners on the circle: `sag` says how far its chords fall short. Bad input: no piece and `problems`; never throws.
 * Source: `cutting.triangulation`.
 */
export function unfoldTransition(t: Transition): FlatTransition {
  const check = checked(t);
  if (check.problems.length > 0) return { triangles: [], sag: 0, problems: check.problems };
  const { low, high, steps } = around(
    quarters(t.start, 0, [0, 0], t.parts),
    quarters(t.end, t.length, t.offset, t.parts),
  );
  const met = develop(low, high, steps);
  const seam: Spot[] =
    t.seam > 0
      ? [
          [-t.seam, met.top[0]?.[1] ?? 0],
          [-t.seam, 0],
        ]
      : [];
  const raw = [...met.bottom, ...[...met.top].reverse(), ...seam];
  const [x0, y0] = [Math.min(...raw.map((p) => p[0])), Math.min(...raw.map((p) => p[1]))];
  const moved = ([x, y]: Spot): Spot => [x - x0, y - y0];
  const triangles = met.triangles.map(({ flat, stands }) => ({ flat: flat.map(moved), stands }));
  const outline = raw
    .map(moved)
    .filter((p, i, all) => i === 0 || Math.hypot(p[0] - (all[i - 1]?.[0] ?? 0), p[1] - (all[i - 1]?.[1] ?? 0)) > 1e-12);
  const size = { width: Math.max(...outline.map((p) => p[0])), height: Math.max(...outline.map((p) => p[1])) };
  const [from, to] = [moved([0, 0]), moved(met.top[0] ?? [0, 0])];
  const last = [met.bottom.at(-1) ?? [0, 0], met.top.at(-1) ?? [0, 0]] as const;
  const lap: FlatLine[] = t.seam > 0 ? [{ kind: 'lap', from, to }] : [];
  const piece: FlatPiece = {
    id: t.id,
    outline,
    size,
    lines: [...lap, ...foldsOf(triangles)],
    holes: [],
    panels: [],
    measures: [
      measure(from, to, 'edge'),
      measure(from, moved(last[0]), 'check'),
      measure(from, moved(last[1]), 'check'),
    ],
  };
  const largest = Math.max(...[t.start, t.end].map((e) => (e.kind === 'round' ? e.diameter / 2 : 0)));
  return { piece, triangles, sag: largest * (1 - Math.cos(Math.PI / (4 * t.parts))), problems: [] };
}
