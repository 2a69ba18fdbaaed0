import { decimalPattern } from './number.ts';

const metreMark = '(?:m|met(?:re|er)s?)';
const parts = new RegExp(`^(-?)(\\d+) ?${metreMark} ?(${decimalPattern}) ?(cm|mm)?$`, 'i');

/** Reads `2 m 40`, `2m40`, `2 m 40 cm` and `2 m 405 mm`, the whole text or nothing. Metres out; undefined when it is none of them. */
export function readMetres(text: string): number | undefined {
  const [, sign, whole, rest = '', unit] = parts.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const share = unit ? belowMetre(Number(rest), unit.toLowerCase() === 'cm' ? 100 : 1000) : places(rest);
  if (share === undefined) return undefined;
  const size = Number(whole) + share;
  return sign === '-' ? -size : size;
}

const belowMetre = (n: number, inMetre: number): number | undefined => (n < inMetre ? n / inMetre : undefined);

/** What follows the mark without a unit of its own: two digits are centimetres, three are millimetres. */
const places = (digits: string): number | undefined => (/^\d{2,3}$/.test(digits) ? Number(`0.${digits}`) : undefined);

/** `2 m 5` is two metres fifty to one and two metres and five centimetres to another: both, in words that parse. */
export function metreReadings(text: string): string[] {
  const [, sign, whole, digit] = new RegExp(`^(-?)(\\d+) ?${metreMark} ?(\\d)$`, 'i').exec(text) ?? [];
  return whole === undefined ? [] : [`${sign}${whole}.${digit} m`, `${sign}${whole}.0${digit} m`];
}
