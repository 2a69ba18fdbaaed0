/**
 * In which order zones are taken out of the balance of a row, and with which zones, still in it by then, each has to do:
 * `node[first[k]]` to `node[first[k + 1] - 1]` are the air nodes of those neighbours.
 */
export type ZoneOrder = {
  /** Air node of the zone taken out as the k-th. */
  readonly own: Int32Array;
  readonly first: Int32Array;
  readonly node: Int32Array;
  /**
   * Where the two by two block of a row's zone and a column's zone lies, by row and column, -1 for zones that never meet;
   * and numbers in all. Blocks lie as they are gone through: of each zone taken out its own, then of each neighbour the
   * one in the neighbour's row and the one in its own.
   */
  readonly block: Int32Array;
  readonly size: number;
};

/**
 * Whoever has the fewest neighbours goes first, and leaves those neighbours to each other: rooms round a hall, under one
 * attic, hardly meet. `pairs` names the zones that give each other heat or air, in either order, any number of times.
 */
export function zoneOrder(zones: number, pairs: Iterable<readonly [number, number]>): ZoneOrder {
  const near = Array.from({ length: zones }, () => new Set<number>());
  for (const [a, b] of pairs) if (a !== b) near[a]?.add(b) && near[b]?.add(a);
  const left = new Set(near.keys());
  const own: number[] = [];
  const neighbours: number[][] = [];
  while (left.size > 0) {
    const zone = [...left].reduce((best, z) => ((near[z]?.size ?? 0) < (near[best]?.size ?? 0) ? z : best));
    const others = [...(near[zone] ?? [])].sort((a, b) => a - b);
    left.delete(zone);
    for (const a of others) {
      near[a]?.delete(zone);
      for (const b of others) if (a !== b) near[a]?.add(b);
    }
    own.push(zone);
    neighbours.push(others);
  }
  let count = 0;
  const block = new Int32Array(zones * zones).fill(-1);
  let size = 0;
  const place = (row: number, column: number): void => {
    block[row * zones + column] = size;
    size += 4;
  };
  for (const [k, zone] of own.entries()) {
    place(zone, zone);
    for (const other of neighbours[k] ?? []) {
      place(other, zone);
      place(zone, other);
    }
  }
  return {
    own: Int32Array.from(own, (z) => 2 * z),
    first: Int32Array.from([0, ...neighbours.map((others) => (count += others.length))]),
    node: Int32Array.from(neighbours.flat(), (z) => 2 * z),
    block,
    size,
  };
}
