import { unresolved } from '../plan/outcome.ts';
import type { UnitModel, UnitRow, UnitSpeed } from './result.ts';

export type Output = {
  readonly capacity: number;
  readonly power: number;
  /** The rows it lies between, and how far from the first to the second. */
  readonly lower: UnitRow;
  readonly upper: UnitRow;
  readonly share: number;
};

/** How far the air of a row is from the air that is asked about; smaller is nearer. */
export type Nearness = (row: UnitRow) => number;

/** °C of indoor air at which most sheets state heating, and of wet bulb for cooling. */
const usual = { indoor: 21.1, wetBulb: 19.4 } as const;
const nearUsual: Nearness = (row) =>
  row.mode === 'heating' ? Math.abs(row.indoor - usual.indoor) : Math.abs((row.indoorWetBulb ?? 0) - usual.wetBulb);

const rowsPath = (unit: UnitModel): string => `candidates.${unit.id}.rows`;

/** K within which two rows are of one outdoor temperature. */
const sameOutdoor = 0.05;

/**
 * Rows of one mode and speed by rising outdoor temperature, one for each: where a sheet states several airs or flows,
 * the nearest. Ends the attempt where it has none.
 */
export function rowsOf(
  unit: UnitModel,
  mode: 'heating' | 'cooling',
  speed: UnitSpeed,
  nearness: Nearness = nearUsual,
): readonly UnitRow[] {
  const rows = unit.rows
    .filter((r) => r.mode === mode && r.speed === speed)
    .sort((a, b) => a.outdoor - b.outdoor || nearness(a) - nearness(b));
  const nearest = rows.filter((r, i) => r.outdoor - (rows[i - 1]?.outdoor ?? Number.NEGATIVE_INFINITY) > sameOutdoor);
  return nearest.length > 0 ? nearest : unresolved('missing', rowsPath(unit));
}

/**
 * Capacity and power at an outdoor temperature, W, straight between the sheet's rows. Beyond its first and last row
 * there is no answer: the attempt ends `out-of-range`. Defrost and altitude are not applied here.
 */
export function readSheet(
  unit: UnitModel,
  mode: 'heating' | 'cooling',
  speed: UnitSpeed,
  outdoor: number,
  nearness: Nearness = nearUsual,
): Output {
  return readRows(rowsOf(unit, mode, speed, nearness), unit, outdoor);
}

/** The same from rows that are at hand, rising in outdoor temperature. */
export function readRows(rows: readonly UnitRow[], unit: UnitModel, outdoor: number): Output {
  const above = rows.findIndex((r) => r.outdoor >= outdoor - 1e-9);
  const [upper, lower] = [rows[above], rows[Math.max(0, above - 1)]];
  if (!upper || !lower) return unresolved('out-of-range', rowsPath(unit));
  if (above === 0 && upper.outdoor > outdoor + 1e-9) return unresolved('out-of-range', rowsPath(unit));
  const span = upper.outdoor - lower.outdoor;
  const share = span > 0 ? (outdoor - lower.outdoor) / span : 0;
  return {
    capacity: lower.capacity + share * (upper.capacity - lower.capacity),
    power: lower.power + share * (upper.power - lower.power),
    lower,
    upper,
    share,
  };
}

/** A number of the rows, straight between them; that of the nearer row where only one states it. */
export function betweenRows(
  { lower, upper, share }: Pick<Output, 'lower' | 'upper' | 'share'>,
  of: (row: UnitRow) => number | undefined,
): number | undefined {
  const [a, b] = [of(lower), of(upper)];
  return a !== undefined && b !== undefined ? a + share * (b - a) : (a ?? b);
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
