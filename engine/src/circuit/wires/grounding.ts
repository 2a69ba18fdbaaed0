import { gaugeArea, gaugeOfArea } from './gauges.ts';
import { groundingTable, type Metal } from './tables.ts';

/**
 * The gauge of the grounding conductor behind `protection` A. `enlarged`: how many times the area that ampacity alone
 * asks for the conductors were given; the ground grows alike, yet never beyond them. Undefined above 200 A.
 * Sources: `circuit.grounding`, `circuit.grounding-grows`.
 */
export function groundingGauge(protection: number, metal: Metal = 'copper', enlarged = 1): number | undefined {
  const least = groundingTable[metal].find((r) => protection <= r.upTo + 1e-9)?.n;
  if (least === undefined || enlarged <= 1) return least;
  return gaugeOfArea(gaugeArea(least) * enlarged);
}
