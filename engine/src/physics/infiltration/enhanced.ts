import type { Recorder } from '../recorder.ts';

/** What an envelope is to wind and stack. Shelter class 1 (none) to 5 (dense). */
export type Envelope = {
  /** m³/(s Paⁿ) */
  readonly coefficient: number;
  readonly exponent: number;
  readonly storeys: 1 | 2 | 3;
  readonly crawlSpace: boolean;
  readonly flue: boolean;
  readonly shelter: 1 | 2 | 3 | 4 | 5;
};

type PerStorey = readonly [number, number, number];
const at = (row: PerStorey, storeys: 1 | 2 | 3): number => row[storeys - 1] ?? row[0];

// ASHRAE Fundamentals, ventilation and infiltration chapter, enhanced model; coefficients from memory.
const stack = { noFlue: [0.054, 0.078, 0.098], flue: [0.069, 0.089, 0.107] } as const;
const wind = {
  slab: { noFlue: [0.156, 0.17, 0.17], flue: [0.142, 0.156, 0.167] },
  crawl: { noFlue: [0.128, 0.142, 0.151], flue: [0.128, 0.142, 0.154] },
} as const;
const eave = [0.48, 0.59, 0.67] as const;
const shelterNoFlue = [1, 0.9, 0.7, 0.5, 0.3] as const;
const shelterFlue = [
  [1.1, 1.02, 0.86, 0.7, 0.54],
  [1.07, 0.98, 0.81, 0.64, 0.47],
  [1.06, 0.97, 0.79, 0.61, 0.43],
] as const;

function shelterFactor(e: Envelope): number {
  const row = e.flue ? (shelterFlue[e.storeys - 1] ?? shelterFlue[0]) : shelterNoFlue;
  return row[e.shelter - 1] ?? row[4];
}

/** Share of the station's wind that reaches the eaves of a house without a flue. Source: `infiltration.enhanced`. */
export const shelterOf = ({ storeys, shelter }: Pick<Envelope, 'storeys' | 'shelter'>): number =>
  (shelterNoFlue[shelter - 1] ?? shelterNoFlue[4]) * at(eave, storeys);

/**
 * The same model as two terms joined by the root of their squares: m³/s for a difference to the power of the exponent,
 * and for the station's wind to twice that power. For loops that call it often. Source: `infiltration.enhanced`.
 */
export function leakageTerms(e: Envelope): { stack: number; wind: number; exponent: number } {
  return { stack: leakageFlow(e, 1, 0), wind: leakageFlow(e, 0, 1), exponent: e.exponent };
}

/**
 * Air leaking through a house, m³/s, driven by the temperature difference (K, either sign) and the wind at a weather
 * station (m/s). Source: `infiltration.enhanced` (from memory; Walker & Wilson form).
 */
export function leakageFlow(e: Envelope, temperatureDifference: number, windSpeed: number, rec?: Recorder): number {
  const key = e.flue ? 'flue' : 'noFlue';
  const c_s = at(stack[key], e.storeys);
  const c_w = at(wind[e.crawlSpace ? 'crawl' : 'slab'][key], e.storeys);
  const inputs = { c: e.coefficient, n: e.exponent };
  const dT = Math.abs(temperatureDifference);
  const u = shelterFactor(e) * at(eave, e.storeys) * windSpeed;
  const qStack = e.coefficient * c_s * dT ** e.exponent;
  const qWind = e.coefficient * c_w * u ** (2 * e.exponent);
  const flow = Math.sqrt(qStack ** 2 + qWind ** 2);
  const source = 'infiltration.enhanced';
  rec?.step('Q_s', 'c * C_s * dT ^ n', { ...inputs, C_s: c_s, dT }, qStack, 'm³/s', source);
  rec?.step('U', 's * G * U_met', { s: shelterFactor(e), G: at(eave, e.storeys), U_met: windSpeed }, u, 'm/s', source);
  rec?.step('Q_w', 'c * C_w * U ^ (2 * n)', { ...inputs, C_w: c_w, U: u }, qWind, 'm³/s', source);
  rec?.step('Q', 'sqrt(Q_s ^ 2 + Q_w ^ 2)', { Q_s: qStack, Q_w: qWind }, flow, 'm³/s', source);
  return flow;
}
