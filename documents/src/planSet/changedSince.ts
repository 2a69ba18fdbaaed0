/** Eight letters for each part of a set that has a bookmark, by its title: they differ as soon as anything on it does. */
export type SheetMarks = Readonly<Record<string, string>>;

/** What of a set is another than on a print, is not on it, or was on it and is no more. */
export function changedSince(printed: SheetMarks, now: SheetMarks) {
  const titles = Object.keys(now);
  return {
    changed: titles.filter((t) => t in printed && printed[t] !== now[t]),
    added: titles.filter((t) => !(t in printed)),
    gone: Object.keys(printed).filter((t) => !(t in now)),
  };
}
