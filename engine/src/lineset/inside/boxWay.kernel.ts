/**
 * Arrays of one search, laid out once: `cost`, `from` and `done` one each for every state (a crossing times 3, plus the
 * axis by which it was reached), the heap with room for six entries a state.
 */
export type WaySearch = {
  readonly cost: Float64Array;
  readonly from: Int32Array;
  readonly done: Uint8Array;
  readonly heapCost: Float64Array;
  readonly heapState: Int32Array;
};

/** Crossings along each axis; `step[axis][i]` m from line `i` to the next; `open` bit `axis` set where one leads on from there. */
export type Crossings = {
  readonly counts: readonly [number, number, number];
  readonly steps: readonly [Float64Array, Float64Array, Float64Array];
  readonly open: Uint8Array;
};

/**
 * The shortest way along the crossings from the state `start` to the state `goal`, and of the shortest the one with the
 * fewest bends, each of which counts as `perBend` m. Fills `search`; true where a way leads.
 */
export function shortestWay(
  { counts, steps, open }: Crossings,
  start: number,
  goal: number,
  perBend: number,
  search: WaySearch,
): boolean {
  const { cost, from, done, heapCost, heapState } = search;
  const [nx, ny] = counts;
  const nxy = nx * ny;
  cost.fill(Number.POSITIVE_INFINITY);
  from.fill(-1);
  done.fill(0);
  let size = 1;
  cost[start] = 0;
  heapCost[0] = 0;
  heapState[0] = start;
  while (size > 0) {
    const state: number = heapState[0]!;
    // Take the least off the heap.
    const lastCost = heapCost[--size]!;
    const lastState = heapState[size]!;
    let hole = 0;
    for (let child = 1; child < size; child = 2 * hole + 1) {
      if (child + 1 < size && heapCost[child + 1]! < heapCost[child]!) child++;
      if (heapCost[child]! >= lastCost) break;
      heapCost[hole] = heapCost[child]!;
      heapState[hole] = heapState[child]!;
      hole = child;
    }
    heapCost[hole] = lastCost;
    heapState[hole] = lastState;
    if (done[state] === 1) continue;
    done[state] = 1;
    const axis = state % 3;
    const at: number = (state - axis) / 3;
    if (state === goal) return true;
    const x = at % nx;
    const y = ((at - x) / nx) % counts[1];
    const z = (at - x - y * nx) / nxy;
    for (let side = 0; side < 6; side++) {
      const along = side >> 1;
      const forth = (side & 1) === 1;
      const stride: number = along === 0 ? 1 : along === 1 ? nx : nxy;
      const place = along === 0 ? x : along === 1 ? y : z;
      if (forth ? place + 1 >= counts[along]! : place === 0) continue;
      const low = forth ? at : at - stride;
      if ((open[low]! & (1 << along)) === 0) continue;
      const next = (forth ? at + stride : low) * 3 + along;
      const length = steps[along]![forth ? place : place - 1]!;
      const total = cost[state]! + length + (along === axis ? 0 : perBend);
      if (total >= cost[next]! - 1e-12) continue;
      cost[next] = total;
      from[next] = state;
      let child = size++;
      while (child > 0) {
        const parent = (child - 1) >> 1;
        if (heapCost[parent]! <= total) break;
        heapCost[child] = heapCost[parent]!;
        heapState[child] = heapState[parent]!;
        child = parent;
      }
      heapCost[child] = total;
      heapState[child] = next;
    }
  }
  return false;
}
