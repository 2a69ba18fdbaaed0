/** Columns of where the sun stands, by what they hang on: lent to whoever lays out another weather of one place. */
export type KeptSun = Map<string, Float64Array>;

/** A column kept under a name, made where it is not there yet. */
export function keptColumn(kept: KeptSun, name: string, make: () => Float64Array): Float64Array {
  const found = kept.get(name) ?? make();
  kept.set(name, found);
  return found;
}
