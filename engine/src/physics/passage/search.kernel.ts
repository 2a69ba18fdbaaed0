import { type Cells, cellAt, deepest, free, mixed, stuck } from './cells.kernel.ts';

/** Straight for the goal rather than by the cheapest way: any chain will do. */
const greed = 1.5;

/** How much dearer than its length a step into a cell is: what is known to be free is cheap, what surely touches is not gone into. */
function dear(c: Cells, i: number): number {
  if (c.state[i] === free) return 1;
  const level = c.level[i] as number;
  const gap = c.gap[i] as number;
  const worse = gap >= 0 ? 1.5 : 4 - (12 * gap) / (c.moves[level] as number);
  return worse;
}

/** What going through a cell that cannot be halved and is not decided costs on top: as much as half a root cell. */
const undecided = 1 << deepest;

function push(c: Cells, size: number, node: number, key: number): void {
  const { heap, keys } = c;
  let i = size;
  while (i > 0) {
    const up = (i - 1) >> 1;
    if ((keys[up] as number) <= key) break;
    heap[i] = heap[up] as number;
    keys[i] = keys[up] as number;
    i = up;
  }
  heap[i] = node;
  keys[i] = key;
}

/** Takes the least off a heap of `size`; it is at 0 before. */
function drop(c: Cells, size: number): void {
  const { heap, keys } = c;
  const last = size - 1;
  const node = heap[last] as number;
  const key = keys[last] as number;
  let i = 0;
  for (;;) {
    let down = 2 * i + 1;
    if (down >= last) break;
    if (down + 1 < last && (keys[down + 1] as number) < (keys[down] as number)) down++;
    if ((keys[down] as number) >= key) break;
    heap[i] = heap[down] as number;
    keys[i] = keys[down] as number;
    i = down;
  }
  heap[i] = node;
  keys[i] = key;
}

/** Twice the finest units between the middles of two cells, the turn the short way round. */
function between(c: Cells, i: number, j: number): number {
  const si = (1 << deepest) >> (c.level[i] as number);
  const sj = (1 << deepest) >> (c.level[j] as number);
  const whole = c.across[2] * 2 * (1 << deepest);
  const dx = 2 * ((c.ix[i] as number) - (c.ix[j] as number)) + si - sj;
  const dy = 2 * ((c.iy[i] as number) - (c.iy[j] as number)) + si - sj;
  let dt = Math.abs(2 * ((c.it[i] as number) - (c.it[j] as number)) + si - sj);
  if (2 * dt > whole) dt = whole - dt;
  return Math.sqrt(dx * dx + dy * dy + dt * dt);
}

function nearest(c: Cells, i: number, goals: Int32Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let g = 0; g < goals.length; g++) {
    const far = between(c, i, goals[g] as number);
    if (far < least) least = far;
  }
  return least;
}

/**
 * The cheapest chain of neighbouring cells, none of them known to be stuck, from one cell to any of the goals: the goal it
 * ends in, with `from` telling the way back; -1 where there is no such chain. Every true path lies in such a chain, so that
 * -1 proves there is none. `mark` is a number never used before with these cells.
 */
export function chain(c: Cells, start: number, goals: Int32Array, mark: number): number {
  const { heap, reached, from, stamp, level, child, state, stack } = c;
  reached[start] = 0;
  from[start] = -1;
  stamp[start] = mark;
  push(c, 0, start, 0);
  let size = 1;
  while (size > 0) {
    const i = heap[0] as number;
    drop(c, size);
    size--;
    if (stamp[i] === -mark) continue;
    for (let g = 0; g < goals.length; g++) if (goals[g] === i) return i;
    stamp[i] = -mark;
    const own = level[i] as number;
    const side = (1 << deepest) >> own;
    for (let way = 0; way < 6; way++) {
      const axis = way >> 1;
      const over = way & 1 ? side : -1;
      const x = (c.ix[i] as number) + (axis === 0 ? over : 0);
      const y = (c.iy[i] as number) + (axis === 1 ? over : 0);
      const t = (c.it[i] as number) + (axis === 2 ? over : 0);
      const first = cellAt(c, x, y, t, own);
      if (first < 0) continue;
      let top = 0;
      stack[top++] = first;
      while (top > 0) {
        const j = stack[--top] as number;
        const below = child[j] as number;
        if (below !== 0) {
          // Of the children those on our side: the near ones where we step forward.
          const near = way & 1 ? 0 : 1;
          for (let k = 0; k < 8; k++) if (((k >> axis) & 1) === near) stack[top++] = below + k;
          continue;
        }
        if (state[j] === stuck || stamp[j] === -mark) continue;
        const step = between(c, i, j) * dear(c, j);
        const cost = (reached[i] as number) + (state[j] === mixed && level[j] === deepest ? step + undecided : step);
        if (stamp[j] === mark && cost >= (reached[j] as number)) continue;
        stamp[j] = mark;
        reached[j] = cost;
        from[j] = i;
        if (size >= heap.length) return -2;
        push(c, size, j, cost + greed * nearest(c, j, goals));
        size++;
      }
    }
  }
  return -1;
}

export const open = (c: Cells, i: number): boolean => c.state[i] === mixed && (c.level[i] as number) < deepest;
