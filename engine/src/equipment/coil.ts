import { airDensity, enthalpy, humidityRatio, saturationRatio } from '../physics/air/index.ts';
import type { UnitRow } from './result.ts';

/** J/(kg K), moist air near room conditions. */
const heatOfAir = 1015;

/** A wet coil as its rating point shows it: apparatus dew point °C, bypass factor at a dry-air flow kg/s. */
export type Coil = { readonly dewPoint: number; readonly bypass: number; readonly massFlow: number };

/** Apparatus dew point: where the line from entering to leaving air meets saturation. °C, kg/kg, Pa. Source: `equipment.coil`. */
export function apparatusDewPoint(
  entering: { t: number; w: number },
  leaving: { t: number; w: number },
  pressure: number,
): number {
  const at = (x: number) => ({
    t: entering.t + x * (leaving.t - entering.t),
    w: entering.w + x * (leaving.w - entering.w),
  });
  const over = (x: number) => at(x).w - saturationRatio(at(x).t, pressure);
  // Leaving air lies before saturation, so the crossing lies beyond 1; a line that never meets it ends at 3.
  let [low, high] = [1, 3];
  if (over(high) < 0) return at(high).t;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (over(middle) < 0) low = middle;
    else high = middle;
  }
  return at(low).t;
}

/** The coil of a cooling row that states wet bulb, airflow and sensible share; undefined where it does not. */
export function coilOf(row: UnitRow, pressure: number): Coil | undefined {
  const { indoorWetBulb, airflow, sensibleShare } = row;
  if (indoorWetBulb === undefined || airflow === undefined || sensibleShare === undefined) return undefined;
  const entering = { t: row.indoor, w: humidityRatio({ t: row.indoor, wetBulb: indoorWetBulb }, pressure) };
  const massFlow = airflow * airDensity(row.indoor, pressure);
  const t = entering.t - (row.capacity * sensibleShare) / (massFlow * heatOfAir);
  const h = enthalpy(entering.t, entering.w) - row.capacity / massFlow / 1000;
  const leaving = { t, w: Math.min(entering.w, (h - 1.006 * t) / (2501 + 1.86 * t)) };
  const dewPoint = apparatusDewPoint(entering, leaving, pressure);
  return { dewPoint, bypass: (t - dewPoint) / (entering.t - dewPoint), massFlow };
}

/** Bypass factor at another flow, the coil's conductance unchanged. */
export const bypassAt = (coil: Coil, massFlow: number): number => coil.bypass ** (coil.massFlow / massFlow);

/**
 * Sensible and latent cooling of a total capacity at the air that enters. A coil warmer than the entering dew point
 * stays dry and gives sensible cooling only. W, °C, kg/kg, kg/s, Pa.
 */
export function splitCooling(
  coil: Coil,
  total: number,
  entering: { t: number; w: number },
  massFlow: number,
  pressure: number,
): { sensible: number; latent: number } {
  const reach = massFlow * heatOfAir * Math.max(0, entering.t - coil.dewPoint) * (1 - bypassAt(coil, massFlow));
  const sensible = Math.min(total, reach);
  const wet = entering.w > saturationRatio(coil.dewPoint, pressure);
  return { sensible, latent: wet ? total - sensible : 0 };
}
