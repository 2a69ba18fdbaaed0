/** What a column asks for: a width in points, as its words need, or a share of what is left. */
export type Asked = { readonly width: number | 'auto' | '*'; readonly least: number; readonly most: number };

/**
 * The widths of columns that share so much room, points. As wide as their words where all have room, between the least and
 * that where not; what is left goes to those that take a share. With too little room all get their least: words are
 * broken then (as HTML tables are laid out, RFC 1942).
 */
export function columnWidths(columns: readonly Asked[], room: number): number[] {
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
