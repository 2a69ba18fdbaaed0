import {
  type CutProblem,
  coneArcs,
  type FlatPiece,
  metalCap,
  metalTransition,
  type TransitionEnd,
  unfoldCone,
  unfoldTransition,
} from '../../../physics/cutting/index.ts';
import { levelled } from '../../../physics/cutting/transition/level.ts';
import { fits } from '../../../physics/cutting/transition/metalPieces.ts';
import { bendRadius, neutralLine } from '../metalDuct.ts';
import type { CutInputs } from '../result.ts';
import type { CutMade, FlatMade } from './result.ts';

/** Tabs of a round cap. Straight parts in a quarter of a round end, where it is rolled and where it is bent. Common practice. */
const [tabs, rolled, bent] = [16, 6, 4];

type Metal = CutInputs['metal'];
type Piece = FlatPiece & { readonly for: string };
type Flat = { readonly pieces: readonly FlatPiece[]; readonly problems: readonly CutProblem[] };
type Reducer = Extract<CutMade, { what: 'reducer' }>;

/** Caps and reducers flat. What is wrong with one stands with it, and it has no pieces. */
export const flatMade = ({ made, metal }: Pick<CutInputs, 'made' | 'metal'>): { made: FlatMade; pieces: Piece[] }[] =>
  made.map((one) => {
    const { pieces, problems } = flatOf(one, metal);
    const arcs = one.what === 'reducer' && isCone(one) ? coneArcs(middles(one, metal)) : undefined;
    return {
      made: { ...one, problems, ...(arcs ? { arcs } : {}) },
      pieces: pieces.map((p) => ({ ...p, for: one.id })),
    };
  });

function flatOf(one: CutMade, metal: Metal): Flat {
  if (one.what === 'unknown') return { pieces: [], problems: [] };
  const { thickness, lap } = metal;
  if (one.what === 'cap') {
    const over = { kind: 'round', diameter: one.diameter + 2 * thickness } as const;
    return onSheet(
      metalCap({ id: one.id, over, thickness, radius: bendRadius, neutral: neutralLine, flange: lap, tabs }),
      metal,
    );
  }
  if (isCone(one)) return onSheet(unfoldCone({ id: one.id, ...middles(one, metal), seam: lap }), metal);
  const { id, start, end, length, offset } = one;
  if (start.kind === 'round' && end.kind === 'round') return onSheet(leaning(one, metal), metal);
  const sheet = { width: metal.length, height: metal.width };
  const bends = { thickness, radius: bendRadius, neutral: neutralLine, seam: lap, parts: bent };
  return metalTransition({ id, start, end, length, offset, sheet, ...bends });
}

/** Whether it is a cone whose ends share an axis. */
const isCone = ({ start, end, offset }: Reducer): boolean =>
  start.kind === 'round' && end.kind === 'round' && Math.hypot(...offset) < 1e-9;

/** Diameters in the middle of the sheet. */
const middles = ({ start, end, length }: Reducer, { thickness }: Metal) => ({
  from: middle(start) + thickness,
  to: middle(end) + thickness,
  length,
});
const middle = (end: TransitionEnd): number => (end.kind === 'round' ? end.diameter : 0);

/** A cone that leans, by triangles; its chords made as long as their arcs, so that it has its girth when it is rolled. */
function leaning(one: Reducer, metal: Metal) {
  const arc = Math.PI / (4 * rolled);
  const { from, to, length } = middles(one, metal);
  const ring = (diameter: number) => ({ kind: 'round', diameter: (diameter * arc) / Math.sin(arc) }) as const;
  const shape = { id: one.id, start: ring(from), end: ring(to), length, offset: one.offset };
  const { piece, problems } = unfoldTransition({ ...shape, parts: rolled, seam: metal.lap });
  if (!piece) return { problems };
  // It is rolled, not bent along lines.
  const lying = levelled({ outline: piece.outline, lines: piece.lines.filter((l) => l.kind === 'lap') });
  return { piece: { ...piece, ...lying, measures: [] }, problems };
}

/** The piece, if it goes on a sheet. */
export function onSheet(
  { piece, problems }: { readonly piece?: FlatPiece; readonly problems: readonly CutProblem[] },
  metal: Metal,
): Flat {
  if (!piece) return { pieces: [], problems };
  if (fits(piece.size, { width: metal.length, height: metal.width })) return { pieces: [piece], problems: [] };
  const [found, max] = [Math.max(piece.size.width, piece.size.height), Math.max(metal.length, metal.width)];
  return { pieces: [], problems: [{ code: 'larger-than-stock', at: ['length'], found, allowed: { max } }] };
}
