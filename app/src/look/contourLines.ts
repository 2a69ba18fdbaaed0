/** A point in steps of the grid: across (columns), then down (rows). */
export type Point = readonly [number, number];
/** One line of equal value: its points in their order; closed where the last is the first. */
export type ContourLine = readonly Point[];

/**
 * Lines along which a grid of values, by row and then by column, has one value: marching squares, straight between
 * neighbours; a saddle is parted by the mean of its corners. Places where a value is not finite are left out.
 */
export function contourLines(rows: readonly (readonly number[])[], level: number): readonly ContourLine[] {
  const links = new Map<string, string[]>();
  const places = new Map<string, Point>();
  const join = (a: Edge, b: Edge): void => {
    places.set(a.id, a.at);
    places.set(b.id, b.at);
    links.set(a.id, [...(links.get(a.id) ?? []), b.id]);
    links.set(b.id, [...(links.get(b.id) ?? []), a.id]);
  };
  for (let r = 0; r + 1 < rows.length; r++)
    for (let c = 0; c + 1 < (rows[r]?.length ?? 0); c++) for (const [a, b] of crossings(rows, r, c, level)) join(a, b);
  return chained(links).map((ids) => ids.map((id) => places.get(id) ?? [Number.NaN, Number.NaN]));
}

/** Where a line crosses the side of a cell; the side's name is the same for both cells that share it. */
type Edge = { readonly id: string; readonly at: Point };

/** The pieces of lines in one cell. A value equal to the level counts as above it. */
function crossings(
  rows: readonly (readonly number[])[],
  r: number,
  c: number,
  level: number,
): (readonly [Edge, Edge])[] {
  const value = (row: number, column: number): number => rows[row]?.[column] ?? Number.NaN;
  const corners = [value(r, c), value(r, c + 1), value(r + 1, c + 1), value(r + 1, c)];
  if (!corners.every(Number.isFinite)) return [];
  const share = (a: number, b: number): number => (level - a) / (b - a);
  const across = (row: number): Edge => ({
    id: `a${row}:${c}`,
    at: [c + share(value(row, c), value(row, c + 1)), row],
  });
  const down = (column: number): Edge => ({
    id: `d${r}:${column}`,
    at: [column, r + share(value(r, column), value(r + 1, column))],
  });
  const sides = [() => across(r), () => down(c + 1), () => across(r + 1), () => down(c)];
  const above = corners.map((x) => x >= level);
  const crossed = sides.flatMap((side, i) => (above[i] === above[(i + 1) % 4] ? [] : [side()]));
  const [top, right, bottom, left] = crossed;
  if (crossed.length === 2 && top && right) return [[top, right]];
  if (!top || !right || !bottom || !left) return [];
  const middle = corners.reduce((a, b) => a + b, 0) / 4 >= level;
  // The first corner joins the last through the middle, or is cut off from it.
  return middle === above[0]
    ? [
        [top, right],
        [bottom, left],
      ]
    : [
        [left, top],
        [right, bottom],
      ];
}

/** Sides in the order in which a line passes them, the open lines first. */
function chained(links: ReadonlyMap<string, readonly string[]>): string[][] {
  const left = new Set(links.keys());
  const ends = [...links].filter(([, to]) => to.length === 1).map(([id]) => id);
  const lines: string[][] = [];
  for (const start of [...ends, ...links.keys()]) {
    if (!left.has(start)) continue;
    const line = [start];
    left.delete(start);
    for (let at: string | undefined = start; at !== undefined; ) {
      at = links.get(at)?.find((id) => left.has(id));
      if (at === undefined) break;
      line.push(at);
      left.delete(at);
    }
    if (links.get(start)?.length === 2) line.push(start);
    lines.push(line);
  }
  return lines;
}

/** Some round values inside a range, about so many. */
export function roundLevels(low: number, high: number, about: number): readonly number[] {
  if (!(high > low)) return [];
  const raw = (high - low) / about;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = power * ([1, 2, 2.5, 5, 10].find((m) => m * power >= raw) ?? 10);
  const first = Math.ceil(low / step + 1e-9);
  return Array.from({ length: Math.max(0, Math.ceil(high / step - 1e-9) - first) }, (_, i) => (first + i) * step);
}
