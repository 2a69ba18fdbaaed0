/** What a column of a price file may hold. */
export const priceColumns = ['name', 'price', 'unit', 'shop', 'line'] as const;
export type PriceColumn = (typeof priceColumns)[number];

/** Which column of a file holds what, by the head as the file has it. */
export type ColumnMap = Partial<Readonly<Record<PriceColumn, string>>>;

const heads: Readonly<Record<PriceColumn, readonly string[]>> = {
  name: ['name', 'what', 'item', 'article', 'description', 'product', 'thing', 'designation'],
  price: ['price', 'unit price', 'net price', 'price each', 'each', 'cost', 'costs'],
  unit: ['unit', 'sold by', 'per', 'pack', 'packaging', 'sold as', 'sales unit'],
  shop: ['shop', 'kind of shop', 'sold at'],
  line: ['line', 'line of the shopping list'],
};

const plain = (head: string): string =>
  head
    .toLowerCase()
    .replaceAll(/[([].*?[)\]]/g, '')
    .replaceAll(/[_\s]+/g, ' ')
    .trim();

/** Where each column stands, by what the person said, else by its head; the first of two alike. */
export function findColumns(cells: readonly string[], said: ColumnMap = {}): Partial<Record<PriceColumn, number>> {
  const found: Partial<Record<PriceColumn, number>> = {};
  const known = cells.map(plain);
  for (const column of priceColumns) {
    const own = said[column];
    const at = own === undefined ? known.findIndex((h) => heads[column].includes(h)) : known.indexOf(plain(own));
    if (at >= 0) found[column] = at;
  }
  return found;
}
