import { decimalPattern } from './number.ts';

const compass = ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'];
const pitch = new RegExp(`^(${decimalPattern}) ?(?:in|:|/|-in-) ?12$`, 'i');
const latitude = new RegExp(`^(${decimalPattern}) ?°? ?([NSEW])$`, 'i');

/** Roof pitch `9 in 12`, a compass point `SSW`, or a coordinate `44.2 N`; degrees, undefined when it is none of them. */
export function angleReading(text: string): number | undefined {
  const rise = pitch.exec(text);
  if (rise) return (Math.atan2(Number(rise[1]), 12) * 180) / Math.PI;
  const point = compass.indexOf(text.toUpperCase());
  if (point >= 0) return point * 22.5;
  const side = latitude.exec(text);
  if (!side) return undefined;
  const size = Number(side[1]);
  return /[SW]/i.test(side[2] ?? '') ? -size : size;
}
