import { type Bounds, type Cells, cellMemory, deepest, leafOf, makeCells, sizeOf, split } from './cells.kernel.ts';
import { clearance } from './clearance.kernel.ts';
import type { Obstacles, Piece, Pose } from './obstacles.ts';
import { type Path, replay, straighten, sweep } from './replay.ts';
import { chain, open } from './search.kernel.ts';
import { settle } from './settle.kernel.ts';

/** What is asked: a piece from one pose to any of some others among obstacles, its middle within bounds. */
export type Question = {
  readonly obstacles: Obstacles;
  readonly bounds: Bounds;
  readonly start: Pose;
  readonly goals: readonly Pose[];
  /** Paths worth a try before any search: straight ways that closed forms know of. They are replayed like any other. */
  readonly guides?: readonly (readonly Pose[])[];
};

/**
 * `passes` with a path that was replayed exactly; `blocked` where every chain of cells of poses is closed by cells in which
 * all poses touch, which proves that no path exists; else `unknown`, the effort spent.
 */
export type Answer =
  | { readonly answer: 'passes'; readonly path: Path; readonly least: number; readonly cells: number }
  | { readonly answer: 'blocked' | 'unknown'; readonly cells: number };

const most = 40_000;
/** How often all cells may be looked through, beside what is needed for every halving. */
const looks = 16;
const rootSize = 0.24;
let lent: ReturnType<typeof cellMemory> | undefined;

const gapAt = ({ obstacles }: Question, { a, b }: Piece, { x, y, turn }: Pose): number =>
  clearance(obstacles, x, y, Math.cos(turn), Math.sin(turn), a, b);

/**
 * Plans a rectangle through the plane with its three freedoms, exactly: cells of poses are halved where it is not decided
 * (from 0.24 m down to 0.03 mm, the turn as much at the piece's corners), the cheapest chain of cells first. `effort` is the
 * most cells. A start or goals that touch are `blocked`.
 */
export function planPath(question: Question, piece: Piece, effort = most): Answer {
  const { bounds, start } = question;
  const goals = question.goals.filter((g) => gapAt(question, piece, g) > 1e-6);
  if (goals.length === 0 || gapAt(question, piece, start) <= 1e-6) return { answer: 'blocked', cells: 0 };
  for (const guide of question.guides ?? []) {
    const path = Float64Array.from(guide.flatMap(({ x, y, turn }) => [x, y, turn]));
    const { clear, least } = replay(question.obstacles, piece, path);
    if (clear) return { answer: 'passes', path, least, cells: 0 };
  }
  lent ??= cellMemory(most);
  const c = makeCells(lent, question.obstacles, piece, bounds, rootSize);
  const ends = new Int32Array(goals.length);
  let tried = 0;
  let looked = 0;
  const square = alignments(question.obstacles);
  for (let mark = 1; c.count < effort - 4096; mark++) {
    for (const [g, { x, y, turn }] of goals.entries()) ends[g] = leafOf(c, x, y, turn);
    const from = leafOf(c, start.x, start.y, start.turn);
    const reached = from < 0 ? -1 : chain(c, from, ends, mark);
    if (reached === -1) return { answer: 'blocked', cells: c.count };
    looked += c.count;
    if (reached === -2 || looked > looks * effort) break;
    const last = !refine(c, reached, effort);
    if (!last && c.count < 1.2 * tried) continue;
    tried = c.count;
    const path = pathOf(c, reached, start, goals[ends.indexOf(reached)] as Pose, square);
    if (path && firstTouch(question.obstacles, piece, path) < 0) return passing(question, piece, path, c.count);
    if (last) break;
  }
  return { answer: 'unknown', cells: c.count };
}

/** Halves what is not decided along a chain; false where nothing is left to halve. */
function refine(c: Cells, end: number, effort: number): boolean {
  let any = false;
  for (let i = end; i >= 0; ) {
    const next = c.from[i] as number;
    if (open(c, i) && c.count < effort - 16) {
      split(c, i);
      any = true;
    }
    i = next;
  }
  return any;
}

/** A path along a chain of cells and the faces between them, each pose moved to where it has room; none where one finds none. */
function pathOf(c: Cells, end: number, start: Pose, goal: Pose, square: Float64Array): Path | undefined {
  const chained: number[] = [];
  for (let i = end; i >= 0; i = c.from[i] as number) {
    chained.push(i);
  }
  chained.reverse();
  const made: number[] = [start.x, start.y, start.turn];
  let turn = start.turn;
  /** The turn nearest to the last one: half a turn more or less is the same piece. */
  const onward = (t: number): number => {
    turn = t + Math.PI * Math.round((turn - t) / Math.PI);
    return turn;
  };
  const middle = (i: number, k: Int32Array): number => (k[i] as number) + sizeOf(c, i) / 2;
  for (const [n, i] of chained.entries()) {
    const before = chained[n - 1];
    if (before !== undefined) addFace(c, before, i, made, onward);
    made.push(c.x0 + middle(i, c.ix) * c.unit, c.y0 + middle(i, c.iy) * c.unit, onward(middle(i, c.it) * c.unitTurn));
  }
  made.push(goal.x, goal.y, onward(goal.turn));
  const path = Float64Array.from(made);
  return settled(c, path, square) ? path : undefined;
}

const margins = [0.01, 0.002, 0.0004, 0.00008];

/** Turns, radians within a quarter, at which a side of the piece lies along an obstacle: where narrow straight ways are passed. */
function alignments({ nx, ny }: Obstacles): Float64Array {
  const quarter = Math.PI / 2;
  const found: number[] = [];
  for (let k = 0; k < nx.length; k++) {
    const turn = Math.atan2(ny[k] as number, nx[k] as number);
    const within = turn - quarter * Math.round(turn / quarter);
    if (!found.some((t) => Math.abs(t - within) < 1e-9)) found.push(within);
  }
  return Float64Array.from(found);
}

/** Farthest that a turn is set square, radians. */
const setSquare = 0.35;

/** Moves every pose but the ends to where it has room, as much as there is, or sets it square to what is near; false where neither does. */
function settled(c: Cells, path: Path, square: Float64Array): boolean {
  const place = new Float64Array(3);
  const quarter = Math.PI / 2;
  for (let i = 3; i + 3 < path.length; i += 3) {
    const turn = path[i + 2] as number;
    let gap = roomAt(c, path, i, turn, place);
    for (let k = 0; k < square.length && gap < (margins[1] as number); k++) {
      const other = square[k] as number;
      const near = other + quarter * Math.round((turn - other) / quarter);
      if (Math.abs(near - turn) > setSquare) continue;
      const better = roomAt(c, path, i, near, place, gap);
      if (better > gap) gap = better;
    }
    if (gap <= 1e-6) return false;
  }
  return true;
}

/** The most room found near a pose at a turn; the pose in the path is moved there where that beats `above`. */
function roomAt(
  { obstacles, piece: { a, b } }: Cells,
  path: Path,
  i: number,
  turn: number,
  place: Float64Array,
  above = Number.NEGATIVE_INFINITY,
): number {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [x, y] = [path[i] as number, path[i + 1] as number];
  let gap = clearance(obstacles, x, y, cos, sin, a, b);
  let [bestX, bestY] = [x, y];
  for (let m = 0; m < margins.length && gap < (margins[m] as number); m++) {
    place[0] = x;
    place[1] = y;
    settle(obstacles, place, cos, sin, a, b, margins[m] as number, 24);
    const better = clearance(obstacles, place[0], place[1], cos, sin, a, b);
    if (better <= gap) continue;
    gap = better;
    [bestX, bestY] = [place[0], place[1]];
  }
  if (gap > above) {
    path[i] = bestX;
    path[i + 1] = bestY;
    path[i + 2] = turn;
  }
  return gap;
}

/** The middle of the smaller one's face: both ways to it stay within their cell. */
function addFace(c: Cells, i: number, j: number, made: number[], onward: (t: number) => number): void {
  const whole = c.across[2] * (1 << deepest);
  const [small, large] = sizeOf(c, i) < sizeOf(c, j) ? [i, j] : [j, i];
  const at = [c.ix, c.iy, c.it].map((k, axis) => {
    const [s, l] = [k[small] as number, k[large] as number];
    const [ws, wl] = [sizeOf(c, small), sizeOf(c, large)];
    if (s >= l && s + ws <= l + wl) return s + ws / 2;
    const above = s === l + wl || (axis === 2 && s === (l + wl) % whole);
    return above ? s : s + ws;
  }) as [number, number, number];
  made.push(c.x0 + at[0] * c.unit, c.y0 + at[1] * c.unit, onward(at[2] * c.unitTurn));
}

function firstTouch(o: Obstacles, piece: Piece, path: Path): number {
  for (let i = 0; i + 3 < path.length; i += 3) if (sweep(o, piece, path, i, i + 3) < 0) return i / 3;
  return -1;
}

function passing({ obstacles }: Question, piece: Piece, path: Path, cells: number): Answer {
  const { least } = replay(obstacles, piece, path);
  const straight = straighten(obstacles, piece, path, least);
  const again = replay(obstacles, piece, straight);
  return again.clear
    ? { answer: 'passes', path: straight, least: again.least, cells }
    : { answer: 'passes', path, least, cells };
}
