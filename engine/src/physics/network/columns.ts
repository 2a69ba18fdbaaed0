/** One number of each thing, in a flat array. */
export function numbersOf<T>(all: readonly T[], pick: (x: T) => number): Float64Array {
  const column = new Float64Array(all.length);
  for (let i = 0; i < all.length; i++) column[i] = pick(all[i] as T);
  return column;
}

/** One whole number of each thing, in a flat array. */
export function indicesOf<T>(all: readonly T[], pick: (x: T) => number): Int32Array {
  const column = new Int32Array(all.length);
  for (let i = 0; i < all.length; i++) column[i] = pick(all[i] as T);
  return column;
}
