import { enthalpy, humidityRatio, standardPressure } from '../../physics/air/index.ts';
import type { UnitRow } from '../result.ts';
import { type AirState, apparatusDewPoint, bypassFactor, transferUnits } from './bypass.ts';

/** kg/m³ of standard air, in which sheets state flows. Source: `equipment.standard-air`. */
export const standardAir = 1.204;

/** A wet coil as its rating point shows it: surface °C and heat W there, NTU times dry-air flow, and the flow itself, kg/s. */
export type Coil = {
  readonly surface: number;
  readonly capacity: number;
  readonly conductance: number;
  readonly massFlow: number;
  /** °C wet bulb entering at the rating point. */
  readonly wetBulb: number;
};

/** A rating is taken at sea level. */
const ratingPressure = standardPressure(0);

/**
 * The coil of a cooling row that states wet bulb, airflow and sensible share; undefined where it does not, or where no
 * coil could give what it states. At its own entering air and flow it gives back the row exactly.
 */
export function coilOf(row: UnitRow): Coil | undefined {
  const { indoorWetBulb: wetBulb, airflow, sensibleShare, capacity } = row;
  if (wetBulb === undefined || airflow === undefined || sensibleShare === undefined) return undefined;
  const entering = { t: row.indoor, w: humidityRatio({ t: row.indoor, wetBulb }, ratingPressure) };
  const massFlow = airflow * standardAir;
  const leaving = leavingOf(entering, capacity / massFlow / 1000, sensibleShare);
  const surface = apparatusDewPoint(entering, leaving, ratingPressure);
  const bypass = bypassFactor(entering.t, leaving.t, surface);
  if (!(bypass > 0 && bypass < 1)) return undefined;
  return { surface, capacity, conductance: transferUnits(bypass) * massFlow, massFlow, wetBulb };
}

/** Air that gave up a heat, kJ/kg, of which a share was sensible. */
function leavingOf(entering: AirState, heat: number, sensibleShare: number): AirState {
  const w = entering.w - ((1 - sensibleShare) * heat) / (2501 + 1.86 * entering.t);
  const wanted = enthalpy(entering.t, w) - sensibleShare * heat;
  return { t: (wanted - 2501 * w) / (1.006 + 1.86 * w), w };
}

/** The coil between two rows of a sheet, `share` of the way. */
export function coilBetween(a: Coil, b: Coil, share: number): Coil {
  const mix = (x: number, y: number): number => x + share * (y - x);
  return {
    surface: mix(a.surface, b.surface),
    capacity: mix(a.capacity, b.capacity),
    conductance: mix(a.conductance, b.conductance),
    massFlow: mix(a.massFlow, b.massFlow),
    wetBulb: mix(a.wetBulb, b.wetBulb),
  };
}

/** K by which two surfaces must differ to tell anything. */
const apart = 0.5;

/**
 * Share of capacity that a compressor gives more for each K its coil is warmer, where a sheet tells it: from rows at
 * one outdoor temperature and speed with different air or flow. The mean of all such pairs with its extremes;
 * undefined where there is none.
 */
export function slopeOf(
  rows: readonly UnitRow[],
): { readonly low: number; readonly likely: number; readonly high: number } | undefined {
  const alike = (a: UnitRow, b: UnitRow): boolean =>
    a.mode === 'cooling' && b.mode === 'cooling' && a.speed === b.speed && Math.abs(a.outdoor - b.outdoor) < 0.3;
  const pairs = rows.flatMap((a, i) => rows.slice(i + 1).flatMap((b) => (alike(a, b) ? [[a, b] as const] : [])));
  const slopes = pairs.flatMap(([rowA, rowB]) => {
    const [a, b] = [coilOf(rowA), coilOf(rowB)];
    if (!a || !b || Math.abs(b.surface - a.surface) <= apart) return [];
    const slope = (b.capacity / a.capacity - 1) / (b.surface - a.surface);
    return slope >= 0 ? [slope] : [];
  });
  if (slopes.length === 0) return undefined;
  const mean = slopes.reduce((a, k) => a + k, 0) / slopes.length;
  return { low: Math.min(mean, ...slopes), likely: mean, high: Math.max(mean, ...slopes) };
}
