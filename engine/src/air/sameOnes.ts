/** Gives what the last call made at a place where it is made of the same things, else makes it. */
export function sameOnes<T>(): (place: number, of: readonly unknown[], make: () => T) => T {
  const kept: { readonly of: readonly unknown[]; readonly made: T }[] = [];
  return (place, of, make) => {
    const last = kept[place];
    if (last?.of.length === of.length && of.every((x, i) => x === last.of[i])) return last.made;
    const made = make();
    kept[place] = { of, made };
    return made;
  };
}
