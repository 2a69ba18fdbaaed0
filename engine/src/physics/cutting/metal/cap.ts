import type { FlatHole, FlatLine, FlatPiece, Spot } from '../fold/pattern.ts';
import { centreLines, measure, reachOf } from '../fold/pattern.ts';
import { Checking } from '../problem.ts';
import { type Bend, bendDeduction } from './bend.ts';
import type { TransitionEnd } from './transition.ts';
import type { FlatMetal } from './wrap.ts';

export type MetalCap = {
  readonly id: string;
  /** What it goes over, outside. */
  readonly over: TransitionEnd;
  readonly thickness: number;
  readonly radius: number;
  readonly neutral: number;
  /** Of a flange, along the duct, from the outer face of the cap. */
  readonly flange: number;
  /** Of a round cap: tabs all round, each bent along a straight line that touches the duct. */
  readonly tabs: number;
  /** From the lower left corner of a rectangular duct's end inside, seen from within. */
  readonly holes?: readonly FlatHole[];
};

/**
 * A cap of sheet metal flat: a face with a flange on every edge that goes over the duct's end. Its corners are cut out where the
 * flanges meet; a round one is a face of many equal sides, so that its tabs bend along straight lines. Bends take their
 * deduction, so that it is inside what the duct is outside. Bad sizes: no piece and `problems`; never throws. Source: `cutting.bend`.
 */
export function metalCap(cap: MetalCap): FlatMetal {
  const check = new Checking();
  for (const k of ['thickness', 'flange'] as const) check.positive([k], cap[k]);
  check.atLeastNought(['radius'], cap.radius);
  const sizes = cap.over.kind === 'round' ? [cap.over.diameter] : [cap.over.width, cap.over.height];
  for (const x of sizes) check.positive(['over'], x);
  if (cap.flange < 2 * (cap.radius + cap.thickness))
    check.say('does-not-fit', ['flange'], cap.flange, { min: 2 * (cap.radius + cap.thickness) });
  if (check.count(['tabs'], cap.tabs) && cap.tabs < 3) check.say('does-not-fit', ['tabs'], cap.tabs, { min: 3 });
  if (check.problems.length > 0) return { problems: check.problems };
  const bend: Bend = { thickness: cap.thickness, radius: cap.radius, neutral: cap.neutral, angle: 90 };
  const taken = bendDeduction(bend) / 2;
  // From the face of the duct out: the cap's own wall, less what its bend takes.
  const corners = faceOf(cap.over, cap.thickness - taken, cap.tabs);
  return { piece: withFlanges(cap, corners, cap.flange - taken), problems: [] };
}

/** Corners of the face at its bends, counter-clockwise, `beyond` the duct's outside. */
function faceOf(over: TransitionEnd, beyond: number, tabs: number): Spot[] {
  if (over.kind === 'rectangle') {
    const [x, y] = [over.width / 2 + beyond, over.height / 2 + beyond];
    return [
      [-x, -y],
      [x, -y],
      [x, y],
      [-x, y],
    ];
  }
  const reach = (over.diameter / 2 + beyond) / Math.cos(Math.PI / tabs);
  // Its first side lies level below.
  return Array.from({ length: tabs }, (_, i): Spot => {
    const a = ((2 * i - 1) * Math.PI) / tabs - Math.PI / 2;
    return [reach * Math.cos(a), reach * Math.sin(a)];
  });
}

/** The face with a flange as wide as each of its sides: corners in and out in turn, and a bend along each side. */
function withFlanges({ id, over, holes = [] }: MetalCap, corners: readonly Spot[], deep: number): FlatPiece {
  const outer = corners.flatMap((p, i): Spot[] => {
    const q = corners[(i + 1) % corners.length] ?? p;
    const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const [ox, oy] = [(deep * (q[1] - p[1])) / long, (deep * (p[0] - q[0])) / long];
    return [p, [p[0] + ox, p[1] + oy], [q[0] + ox, q[1] + oy]];
  });
  const [x0, y0] = [Math.min(...outer.map((p) => p[0])), Math.min(...outer.map((p) => p[1]))];
  const move = ([x, y]: Spot): Spot => [x - x0, y - y0];
  const outline = outer.map(move);
  const size = { width: Math.max(...outline.map((p) => p[0])), height: Math.max(...outline.map((p) => p[1])) };
  const face = corners.map(move);
  const folds = face.map((from, i): FlatLine => ({ kind: 'fold', from, to: face[(i + 1) % face.length] ?? from }));
  const corner: Spot = over.kind === 'rectangle' ? move([-over.width / 2, -over.height / 2]) : [0, 0];
  const placed = holes.map((h): FlatHole => ({ ...h, centre: [corner[0] + h.centre[0], corner[1] + h.centre[1]] }));
  return {
    id,
    outline,
    size,
    lines: [...folds, ...placed.flatMap((h) => centreLines(h.centre, Math.max(reachOf(h).x, reachOf(h).y) + 0.02))],
    holes: placed,
    panels: [],
    measures: [measure([0, 0], [size.width, size.height], 'check')],
  };
}
