/** How a column of prices writes its decimals. */
export type Decimals = ',' | '.';

const currency = /[€$£¥₤₹₽₩\s\u00a0\u202f'’]|\b(?:usd|eur|gbp|cad|aud|nzd|chf|sek|nok|dkk|isk|kr|fr)\b\.?/gi;
const bare = (cell: string): string => cell.replaceAll(currency, '').replace(/[.,][-–]+$/, '');

/** The decimal sign that the cells of a column settle between them; nothing where they contradict or do not say. */
export function decimalsOf(cells: readonly string[]): Decimals | undefined {
  const signs = new Set(cells.flatMap((c) => signIn(bare(c)) ?? []));
  return signs.size === 1 ? [...signs][0] : undefined;
}

/** The sign that must be the decimal one in a number: the later of two kinds, or one before other than three digits. */
function signIn(number: string): Decimals | undefined {
  const comma = number.lastIndexOf(',');
  const point = number.lastIndexOf('.');
  if (comma < 0 && point < 0) return undefined;
  const sign = comma > point ? ',' : '.';
  const both = comma >= 0 && point >= 0;
  const once = number.indexOf(sign) === number.lastIndexOf(sign);
  const after = number.length - 1 - number.lastIndexOf(sign);
  if (!once) return sign === ',' ? '.' : ',';
  return both || after !== 3 || number.startsWith(`0${sign}`) ? sign : undefined;
}

/**
 * A price as people write it: `12.50`, `12,50 €`, `$1,234.00`, `1 234,-`. Words, two readings or nothing: the reason.
 * `column` is the decimal sign that the column settles.
 */
export function priceIn(
  cell: string,
  column: Decimals | undefined,
): { readonly price: number } | { readonly why: 'empty' | 'words' | 'two-readings' } {
  const number = bare(cell);
  if (number === '') return { why: 'empty' };
  if (!/^[-−+]?(?:\d[\d.,]*|[.,]\d+)$/.test(number)) return { why: 'words' };
  const mark = signIn(number) ?? column;
  if (mark === undefined && /[.,]/.test(number)) return { why: 'two-readings' };
  const thousands = mark === ',' ? '.' : ',';
  const plain = number
    .replace('−', '-')
    .replaceAll(thousands, '')
    .replace(mark ?? '.', '.');
  const price = Number(plain);
  return Number.isFinite(price) && /^[-+]?\d*\.?\d*$/.test(plain) ? { price } : { why: 'words' };
}
