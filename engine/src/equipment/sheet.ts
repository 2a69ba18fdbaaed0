import { unresolved } from '../plan/outcome.ts';
import type { UnitModel, UnitRow, UnitSpeed } from './result.ts';

export type Output = { readonly capacity: number; readonly power: number; readonly row: UnitRow };

const rowsPath = (unit: UnitModel): string => `candidates.${unit.id}.rows`;

/** Rows of one mode and speed by rising outdoor temperature; ends the attempt where the sheet has none. */
export function rowsOf(unit: UnitModel, mode: 'heating' | 'cooling', speed: UnitSpeed): readonly UnitRow[] {
  const rows = unit.rows.filter((r) => r.mode === mode && r.speed === speed).sort((a, b) => a.outdoor - b.outdoor);
  return rows.length > 0 ? rows : unresolved('missing', rowsPath(unit));
}

/**
 * Capacity and power at an outdoor temperature, W, straight between the sheet's rows. Beyond its first and last row
 * there is no answer: the attempt ends `out-of-range`. Defrost and altitude are not applied here.
 */
export function readSheet(unit: UnitModel, mode: 'heating' | 'cooling', speed: UnitSpeed, outdoor: number): Output {
  const rows = rowsOf(unit, mode, speed);
  const above = rows.findIndex((r) => r.outdoor >= outdoor - 1e-9);
  const [upper, lower] = [rows[above], rows[Math.max(0, above - 1)]];
  if (!upper || !lower) return unresolved('out-of-range', rowsPath(unit));
  if (above === 0 && upper.outdoor > outdoor + 1e-9) return unresolved('out-of-range', rowsPath(unit));
  const span = upper.outdoor - lower.outdoor;
  const share = span > 0 ? (outdoor - lower.outdoor) / span : 0;
  return {
    capacity: lower.capacity + share * (upper.capacity - lower.capacity),
    power: lower.power + share * (upper.power - lower.power),
    row: share < 0.5 ? lower : upper,
  };
}

/** °C between which frost costs heat, and where it costs most: 17, 35 and 45 °F. Source: `equipment.defrost`. */
const frost = { from: -8.333, worst: 1.667, to: 7.222 } as const;

/** Share of capacity lost to frost and defrost at an outdoor temperature, when `worst` is lost at 35 °F. */
export function defrostLoss(outdoor: number, worst: number): number {
  if (outdoor <= frost.from || outdoor >= frost.to) return 0;
  const reach =
    outdoor < frost.worst
      ? (outdoor - frost.from) / (frost.worst - frost.from)
      : (frost.to - outdoor) / (frost.to - frost.worst);
  return worst * reach;
}
