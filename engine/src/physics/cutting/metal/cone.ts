import { type FlatLine, type FlatPiece, measure, type Spot } from '../fold/pattern.ts';
import { Checking, type CutProblem } from '../problem.ts';
import { levelled } from '../transition/level.ts';

/** A cone cut off at both ends, between two circles that share an axis; m of the middle of the sheet. */
export type Cone = {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly length: number;
  /** Left beyond the first edge for the seam. */
  readonly seam: number;
};

/** Its development: two arcs about one centre over one angle, degrees. */
export type ConeArcs = { readonly inner: number; readonly outer: number; readonly angle: number };

/** Points on each arc for every 3 degrees: a chord strays from it by less than 0.04 % of its radius. */
const fine = 3;

/**
 * A cone's development by its formula: the slope is hypot(length, half the difference of the diameters), the arcs have radii in
 * the ratio of the diameters, and the angle is 180 times the difference of the diameters over the slope. Equal ends: no arcs.
 */
export function coneArcs({ from, to, length }: Pick<Cone, 'from' | 'to' | 'length'>): ConeArcs | undefined {
  const [small, large] = [Math.min(from, to), Math.max(from, to)];
  const slope = Math.hypot(length, (large - small) / 2);
  if (large - small < 1e-6) return undefined;
  const outer = (slope * large) / (large - small);
  return { inner: outer - slope, outer, angle: (180 * (large - small)) / slope };
}

/** The cone flat, seen from within, with its seam. Bad sizes: no piece and `problems`; never throws. Source: `cutting.cone`. */
export function unfoldCone(cone: Cone): { readonly piece?: FlatPiece; readonly problems: readonly CutProblem[] } {
  const check = new Checking();
  for (const k of ['from', 'to', 'length'] as const) check.positive([k], cone[k]);
  check.atLeastNought(['seam'], cone.seam);
  if (check.problems.length > 0) return { problems: check.problems };
  const arcs = coneArcs(cone);
  const { inner, outer } = arcs ? arcOutline(arcs) : straightOutline(cone);
  const [a, b]: readonly [Spot, Spot] = [outer[0] ?? [0, 0], inner[0] ?? [0, 0]];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  // Beyond the first edge, away from the piece, its corners cut off at 45 degrees.
  const { seam } = cone;
  const strip: Spot[] =
    seam > 0
      ? [
          [b[0] - seam * uy - seam * ux, b[1] + seam * ux - seam * uy],
          [a[0] - seam * uy + seam * ux, a[1] + seam * ux + seam * uy],
        ]
      : [];
  const lap: FlatLine[] = seam > 0 ? [{ kind: 'lap', from: a, to: b }] : [];
  const lying = levelled({ outline: [...outer, ...[...inner].reverse(), ...strip], lines: lap });
  const [first, far]: readonly [Spot, Spot] = [lying.outline[0] ?? [0, 0], lying.outline[outer.length] ?? [0, 0]];
  return {
    piece: { id: cone.id, ...lying, holes: [], panels: [], measures: [measure(first, far, 'check')] },
    problems: [],
  };
}

/** Points on both arcs in order, counter-clockwise on the outer. */
function arcOutline({ inner, outer, angle }: ConeArcs): { readonly inner: Spot[]; readonly outer: Spot[] } {
  const n = Math.max(1, Math.ceil(angle / fine));
  const on = (radius: number): Spot[] =>
    Array.from({ length: n + 1 }, (_, i): Spot => {
      const a = (((i / n) * angle - angle / 2 - 90) * Math.PI) / 180;
      return [radius * Math.cos(a), radius * Math.sin(a)];
    });
  return { inner: on(inner), outer: on(outer) };
}

const straightOutline = ({ from, length }: Cone): { readonly inner: Spot[]; readonly outer: Spot[] } => ({
  outer: [
    [0, 0],
    [Math.PI * from, 0],
  ],
  inner: [
    [0, length],
    [Math.PI * from, length],
  ],
});
