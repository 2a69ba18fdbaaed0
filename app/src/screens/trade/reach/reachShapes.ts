/** Cells of a row that one stock length reaches: `from` up to, not with, `to`. Row 0 lies at the ground. */
type Rows = readonly (readonly { readonly from: number; readonly to: number; readonly stock: number }[])[];

/** A square of cells: its lowest row, its first column, cells of a side. */
export type Square = { readonly row: number; readonly column: number; readonly side: number };

/** The largest square of cells that one stock length reaches, which is where its letter is read best; none where it reaches nothing. */
export function roomiest(rows: Rows, stock: number): Square | undefined {
  let best: Square | undefined;
  // For each cell the side of the largest square whose upper right cell it is, from the row below.
  let below: number[] = [];
  rows.forEach((row, r) => {
    const here: number[] = [];
    for (const { from, to } of row.filter((run) => run.stock === stock))
      for (let c = from; c < to; c++) {
        const side = 1 + Math.min(here[c - 1] ?? 0, below[c] ?? 0, below[c - 1] ?? 0);
        here[c] = side;
        if (best === undefined || side > best.side) best = { row: r - side + 1, column: c - side + 1, side };
      }
    below = here;
  });
  return best;
}

/** What one stock length reaches as the path of an SVG: `x` of a column's left edge, `y` of a row's lower one. */
export function regionPath(
  rows: Rows,
  stock: number,
  x: (column: number) => number,
  y: (row: number) => number,
): string {
  const at = (n: number): string => n.toFixed(1);
  return rows
    .flatMap((row, r) =>
      row
        .filter((run) => run.stock === stock)
        .map(({ from, to }) => `M${at(x(from))} ${at(y(r))}H${at(x(to))}V${at(y(r + 1))}H${at(x(from))}z`),
    )
    .join('');
}
