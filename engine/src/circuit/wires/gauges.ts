import type { Recorder } from '../../physics/recorder.ts';
import { type Metal, metals } from './tables.ts';

/** Diameter of a solid conductor of gauge `n` (0 for 1/0, -1 for 2/0), m. The gauge's definition. Source: `circuit.gauge`. */
export const gaugeDiameter = (n: number): number => 0.000127 * 92 ** ((36 - n) / 39);

/** Its area, mm². */
export const gaugeArea = (n: number): number => (Math.PI / 4) * (gaugeDiameter(n) * 1000) ** 2;

/** `12`, `1/0`: what stands on the cable. */
export const gaugeName = (n: number): string => (n > 0 ? String(n) : `${1 - n}/0`);

/** The next thicker gauge that is made: 4, 3, 2, 1, 1/0 one by one, thinner ones by twos. */
export const nextThicker = (n: number): number => (n > 4 ? n - 2 : n - 1);

/** The thinnest gauge at hand that has at least this area, mm². */
export function gaugeOfArea(area: number): number {
  let n = 18;
  while (n > -3 && gaugeArea(n) < area * (1 - 1e-9)) n = nextThicker(n);
  return n;
}

/** The gauge that has this area within half a percent, 18 to 4/0; undefined for a metric size. */
export function gaugeExactly(area: number): number | undefined {
  const n = gaugeOfArea(area * 0.995);
  return Math.abs(gaugeArea(n) - area) <= 0.005 * area ? n : undefined;
}

/**
 * Ω for each metre of one conductor of `area` mm² at `temperature` °C; straight, so stranded ones lie about 2 % above.
 * Not for area 0. Sources: `circuit.resistance`, `circuit.resistance-aluminium`.
 */
export function resistancePerMetre(area: number, temperature: number, metal: Metal = 'copper', rec?: Recorder): number {
  const { resistivity: rho, perKelvin: a } = metals[metal];
  const resistance = (rho / area) * (1 + a * (temperature - 20));
  const source = metal === 'copper' ? 'circuit.resistance' : 'circuit.resistance-aluminium';
  rec?.step('R', 'rho / A * (1 + a * (T - 20))', { rho, A: area, a, T: temperature }, resistance, 'Ω/m', source);
  return resistance;
}
