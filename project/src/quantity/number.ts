/** What a piece of text says as a number: one reading, several, or none. */
export type NumberReading = { readonly value: number; readonly text: string };

const glyphs: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** One spelling for marks that people type or paste in many: minus signs, primes, fraction glyphs, narrow blanks. */
export function plain(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (g) => ` ${glyphs[g]}`)
    .replace(/[−–]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/º/g, '°')
    .replace(/[′’‘`´]/g, "'")
    .replace(/[″”“]/g, '"')
    .replace(/''/g, '"')
    .replace(/(\d)[\u202f\u00a0\u2009](?=\d{3})/g, '$1')
    .replace(/\s+/g, ' ')
    .replace(/^ ?(?:\+|(minus)) ?(?=[\d.])/i, (_, minus) => (minus ? '-' : ''))
    .replace(/^(-?\d{1,3})((?: \d{3})+)(?![\d/])/, (_, first, groups) => first + groups.replaceAll(' ', ''))
    .trim();
}

/** Commas that can only part decimals as points, for forms of writing that hold a number within them: `RSI 3,3`. */
export const withPoints = (text: string): string => text.replace(/(\d),(\d{1,2}|\d{4,})(?!\d)/g, '$1.$2');

const decimal = '(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?';
export const decimalPattern = decimal;

/** The finest fraction anybody writes; what lies beyond is two numbers with a stroke, like `120/240`. */
const finestFraction = 64;

/** Reads one plain number, a fraction, or a whole number with a fraction; undefined when it is none of them. */
export function readNumber(text: string): number | undefined {
  const mixed = /^(-?)(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (mixed) {
    const [, sign, whole = '0', top = '0', bottom = '1'] = mixed;
    if (Number(bottom) === 0 || Number(bottom) > finestFraction) return undefined;
    const size = Number(whole) + Number(top) / Number(bottom);
    return sign === '-' ? -size : size;
  }
  return new RegExp(`^-?${decimal}$`).test(text) ? Number(text) : undefined;
}

/**
 * A comma may part thousands or decimals: both readings where both are possible, one where only one is. Nothing but
 * decimals follows a nought or four digits, and where a point stands too the last of the two parts the decimals.
 */
export function commaReadings(text: string): NumberReading[] {
  const reading = (number: string): NumberReading => ({ value: Number(number), text: number });
  if (/^-?\d{1,3}(?:,\d{3})+\.\d+$/.test(text)) return [reading(text.replaceAll(',', ''))];
  if (/^-?\d{1,3}(?:\.\d{3})+,\d+$/.test(text)) return [reading(text.replaceAll('.', '').replace(',', '.'))];
  const m = /^(-?\d+)((?:,\d+)+)$/.exec(text);
  if (!m) return [];
  const [, whole = '', rest = ''] = m;
  const groups = rest.slice(1).split(',');
  const thousands = /^-?[1-9]\d{0,2}$/.test(whole) && groups.every((g) => g.length === 3);
  return [
    ...(groups.length === 1 ? [reading(`${whole}.${groups[0]}`)] : []),
    ...(thousands ? [reading(`${whole}${groups.join('')}`)] : []),
  ];
}
