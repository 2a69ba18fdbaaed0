/** What a column asks for: a width in points, as its words need, or a share of what is left. */
export type Asked = { readonly width: number | 'auto' | '*'; readonly least: number; readonly most: number };

/**
 * The widths of columns that share so much room, points. As wide as their words where all have room, between the least and
 * that where not; what is left goes to those that take a share. A width that is given holds its longest word, so that large
 * letters break none, unless the others would then lack room for theirs. With too little room all get their least: words
 * are broken then (as HTML tables are laid out, RFC 1942).
 */
export function columnWidths(columns: readonly Asked[], room: number): number[] {
  const held = columns.map((c) => (typeof c.width === 'number' ? { ...c, width: Math.max(c.width, c.least) } : c));
  return widthsIn(leastOf(held) <= room ? held : columns, room);
}

/** What columns take when each that gives way is as narrow as its longest word. */
const leastOf = (columns: readonly Asked[]): number =>
  columns.reduce((sum, { width, least }) => sum + (typeof width === 'number' ? width : least), 0);

function widthsIn(columns: readonly Asked[], room: number): number[] {
  const fixed = columns.reduce((sum, { width }) => sum + (typeof width === 'number' ? width : 0), 0);
  const shared = columns.filter((c) => c.width === '*');
  const share = { least: Math.max(0, ...shared.map((c) => c.least)), most: Math.max(0, ...shared.map((c) => c.most)) };
  const open = room - fixed;
  const sum = (key: 'least' | 'most') =>
    columns.reduce((total, c) => total + (c.width === 'auto' ? c[key] : 0), 0) + share[key] * shared.length;
  const [least, most] = [sum('least'), sum('most')];
  const grown = most < open ? 1 : least >= open ? 0 : (open - least) / (most - least);
  const own = ({ width, least: low, most: high }: Asked) =>
    width === 'auto' ? low + (high - low) * grown : width === '*' ? 0 : width;
  const left = open - columns.reduce((total, c) => total + (c.width === 'auto' ? own(c) : 0), 0);
  return columns.map((c) => (c.width === '*' ? (grown === 0 ? share.least : left / shared.length) : own(c)));
}
