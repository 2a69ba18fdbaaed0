import { decimalPattern } from './number.ts';

const compass = ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'];
const pitch = new RegExp(`^(${decimalPattern}) ?(?:in|:|/|-in-) ?12$`, 'i');
const latitude = new RegExp(`^(${decimalPattern}) ?°? ?([NSEW])$`, 'i');

const minutes = new RegExp(`^(-?)(\\d+) ?° ?(${decimalPattern}) ?'(?: ?(${decimalPattern}) ?")? ?([NSEW])?$`, 'i');

/** `44° 30' 15" N` as maps print it; undefined where minutes or seconds are sixty and more. */
function degreesMinutes(text: string): number | undefined {
  const m = minutes.exec(text);
  if (!m) return undefined;
  const [, sign, whole, min = '0', sec = '0', side = ''] = m;
  if (Number(min) >= 60 || Number(sec) >= 60) return undefined;
  const size = Number(whole) + Number(min) / 60 + Number(sec) / 3600;
  return (sign === '-') !== /[SW]/i.test(side) ? -size : size;
}

/** Roof pitch `9 in 12`, a compass point `SSW`, or a coordinate `44.2 N`, `44° 12' N`; degrees, undefined when it is none of them. */
export function angleReading(text: string): number | undefined {
  const rise = pitch.exec(text);
  if (rise) return (Math.atan2(Number(rise[1]), 12) * 180) / Math.PI;
  const point = compass.indexOf(text.toUpperCase());
  if (point >= 0) return point * 22.5;
  const split = degreesMinutes(text);
  if (split !== undefined) return split;
  const side = latitude.exec(text);
  if (!side) return undefined;
  const size = Number(side[1]);
  return /[SW]/i.test(side[2] ?? '') ? -size : size;
}
