import type { LogHours } from '@kneewall/project';
import { coefficientHalfWidth, type Interval, leastSquares } from '../../../physics/fitting/index.ts';
import type { LogBeside, Untold } from './result.ts';

/** Hours on the battery alone that are needed, and what they must span: W between the quiet and the busy ones. */
const hoursLeast = 100;
const spanLeast = 150;
/** Below these there is no sun: W of panels, W/m². */
const dark = { panels: 5, level: 5 } as const;

type Found = Pick<LogBeside, 'inverter'> & { readonly why?: Untold };

/**
 * What the inverter takes for itself: in hours without sun in which the battery gives about what the house takes, battery = idle +
 * each × house. Whether a log counts what goes out of the battery as more or as less than nothing is told by which follows the house.
 */
export function inverterOf({ columns }: LogHours): Found {
  const { battery, housePower: house, sunPower, sun } = columns;
  if (!battery) return {};
  if (!house) return { why: 'no-house' };
  const light = sunPower ?? sun;
  if (!light) return { why: 'no-sun' };
  const most = sunPower ? dark.panels : dark.level;
  const night = Array.from(battery.keys()).filter(
    (h) => (light[h] ?? Number.NaN) < most && (house[h] ?? 0) > 20 && !Number.isNaN(battery[h] ?? Number.NaN),
  );
  const sign = night.reduce((a, h) => a + Math.sign(battery[h] ?? 0), 0) < 0 ? -1 : 1;
  // A generator or the grid that helps, or charges, makes the battery's share far less than the house's.
  const alone = night.filter((h) => {
    const share = (sign * (battery[h] ?? 0)) / (house[h] ?? 1);
    return share > 0.9 && share < 3;
  });
  if (alone.length < hoursLeast) return { why: 'never-alone' };
  const taken = alone.map((h) => house[h] ?? 0);
  const sorted = [...taken].sort((a, b) => a - b);
  const span = (sorted[Math.floor(0.95 * sorted.length)] ?? 0) - (sorted[Math.floor(0.05 * sorted.length)] ?? 0);
  const fit = leastSquares(
    [alone.map(() => 1), taken],
    alone.map((h) => sign * (battery[h] ?? 0)),
  );
  if (!fit || span < spanLeast || fit.r2 < 0.5) return { why: 'no-tie' };
  const interval = (k: number): Interval => {
    const likely = fit.coefficients[k] ?? Number.NaN;
    const half = coefficientHalfWidth(fit, k, 0.9);
    return { likely, low: likely - half, high: likely + half };
  };
  return { inverter: { idle: interval(0), each: interval(1), hours: alone.length } };
}
