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
    .replace(/[′’‘`´]/g, "'")
    .replace(/[″”“]/g, '"')
    .replace(/''/g, '"')
    .replace(/(\d)[\u202f\u00a0\u2009](?=\d{3})/g, '$1')
    .replace(/\s+/g, ' ')
    .trim();
}

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

/** A comma may part thousands or decimals: both readings where both are possible, one where only one is. */
export function commaReadings(text: string): NumberReading[] {
  const m = /^(-?\d{1,3})((?:,\d+)+)$/.exec(text);
  if (!m) return [];
  const groups = (m[2] ?? '').slice(1).split(',');
  const readings: NumberReading[] = [];
  if (groups.length === 1) readings.push({ value: Number(`${m[1]}.${groups[0]}`), text: `${m[1]}.${groups[0]}` });
  if (groups.every((g) => g.length === 3))
    readings.push({ value: Number(`${m[1]}${groups.join('')}`), text: `${m[1]}${groups.join('')}` });
  return readings;
}
