import { foot, inch } from './kinds.ts';
import { decimalPattern, readNumber } from './number.ts';

const part = `\\d+[ -]\\d+\\/\\d+|\\d+\\/\\d+|${decimalPattern}`;
const feetMark = "(?:'|ft\\.?|feet|foot)";
const inchMark = '(?:"|in\\.?|inch(?:es)?)';
const both = new RegExp(`^(-?)(${decimalPattern}) ?${feetMark}[ -]?(${part}) ?(${inchMark})?$`, 'i');
const feetOnly = new RegExp(`^(-?)(${part}) ?${feetMark}$`, 'i');
const inchesOnly = new RegExp(`^(-?)(${part}) ?${inchMark}$`, 'i');

/** Reads feet, inches and fractions, the whole text or nothing. Metres out; undefined when it is no such length. */
export function readFeetInches(text: string): number | undefined {
  const b = both.exec(text);
  if (b) {
    const feet = Number(b[2]);
    const inches = readNumber(b[3] ?? '');
    // After a foot mark a bare number below 12 can only be inches: 5'3 is 5' 3".
    if (inches === undefined || inches >= 12 || !Number.isInteger(feet)) return undefined;
    return signed(b[1], feet * foot + inches * inch);
  }
  return single(feetOnly.exec(text), foot) ?? single(inchesOnly.exec(text), inch);
}

function single(match: RegExpExecArray | null, unit: number): number | undefined {
  const n = match ? readNumber(match[2] ?? '') : undefined;
  return n === undefined ? undefined : signed(match?.[1], n * unit);
}

const signed = (sign: string | undefined, size: number): number => (sign === '-' ? -size : size);

/** Prints metres as feet, inches and a fraction of an inch, to 1/`parts` inch. Below 4 ft inches alone. */
export function printFeetInches(metres: number, parts: number): string {
  const total = Math.round((Math.abs(metres) / inch) * parts);
  const sign = metres < 0 && total > 0 ? '-' : '';
  const perFoot = 12 * parts;
  const feet = total >= 4 * perFoot ? Math.floor(total / perFoot) : 0;
  const rest = total - feet * perFoot;
  const whole = Math.floor(rest / parts);
  const fraction = fractionText(rest - whole * parts, parts);
  const inches = fraction === '' ? `${whole}` : whole === 0 && feet === 0 ? fraction : `${whole} ${fraction}`;
  if (feet === 0) return `${sign}${inches}"`;
  return rest === 0 ? `${sign}${feet}'` : `${sign}${feet}' ${inches}"`;
}

function fractionText(top: number, bottom: number): string {
  if (top === 0) return '';
  return top % 2 === 0 && bottom % 2 === 0 ? fractionText(top / 2, bottom / 2) : `${top}/${bottom}`;
}
