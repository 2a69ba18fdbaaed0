import { diodeAt, diodePoints } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const module = {
  currentPerKelvin: 0.004539,
  slope: 2.6373,
  light: 5.114,
  dark: 8.196e-10,
  shunt: 381.68,
  series: 1.065,
  gap: 1.121,
  gapPerKelvin: -0.0002677,
};

const table = [
  [1000, 25, [5.114, 8.196e-10, 381.68, 2.6373, 5.09977, 59.400651, 4.689806, 46.902632, 219.964255]],
  [800, 45, [4.163824, 1.92511e-8, 477.1, 2.814211, 4.15455, 53.933247, 3.793576, 42.303765, 160.48255]],
  [200, 10, [1.009183, 5.786353e-11, 1908.4, 2.504617, 1.00862, 58.986152, 0.936081, 50.343073, 47.125218]],
  [1000, 60, [5.272865, 1.613716e-7, 381.68, 2.946894, 5.258192, 50.912038, 4.747334, 38.416476, 182.375858]],
] as const;

const fields = [
  ['light current', 'A'],
  ['dark current', 'A'],
  ['shunt', 'ohm'],
  ['slope', 'V'],
  ['short', 'A'],
  ['open', 'V'],
  ['best current', 'A'],
  ['best voltage', 'V'],
  ['best power', 'W'],
] as const;

/** One-diode curves. */
export const diode = (): Row[] =>
  table.flatMap(([light, cell, expected]) => {
    const d = diodeAt(module, light, cell);
    const p = diodePoints(d);
    const ours = [d.light, d.dark, d.shunt, d.slope, p.short, p.open, p.current, p.voltage, p.power];
    return fields.map(([field, unit], i) => {
      const truth = expected[i] ?? Number.NaN;
      return check(`${light} W/m², ${cell} °C`, field, unit, [truth, 1e-5 * truth], ours[i] ?? Number.NaN);
    });
  });
