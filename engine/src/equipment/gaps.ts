import type { ClimateResult } from '../climate/result.ts';
import { coilOf } from './coil/fit.ts';
import type { Candidate, UnitRow, UnitSpeed } from './result.ts';

/** What a sheet lacks or says that cannot be. The first ones leave an answer open, the last ones only widen it. */
export const gapNames = ['least', 'cold', 'hot', 'odd', 'coil', 'blower', 'tests'] as const;
export type Gap = (typeof gapNames)[number];
export const softGaps: readonly Gap[] = ['coil', 'blower', 'tests'];

const rowsFor = ({ unit }: Candidate, mode: UnitRow['mode'], speed: UnitSpeed): readonly UnitRow[] =>
  unit.rows.filter((r) => r.mode === mode && r.speed === speed).sort((a, b) => a.outdoor - b.outdoor);

/** The gaps of a candidate's sheet, in their order. */
export function gapsOf(candidate: Candidate, climate: ClimateResult | undefined): readonly Gap[] {
  const { unit, blower, seasons } = candidate;
  const heating = rowsFor(candidate, 'heating', 'most');
  const cooling = rowsFor(candidate, 'cooling', 'most');
  const night = climate?.night.ok ? climate.night.value.outdoor.likely : undefined;
  const hot = climate?.day.ok ? climate.day.value.outdoor.likely : undefined;
  const found: Readonly<Record<Gap, boolean>> = {
    least: rowsFor(candidate, 'heating', 'least').length === 0,
    cold: heating.length === 0 || (night !== undefined && night < (heating[0]?.outdoor ?? 0)),
    hot: cooling.length === 0 || (hot !== undefined && hot > (cooling.at(-1)?.outdoor ?? 0)),
    odd: oddRows(unit.rows).length > 0,
    coil: !cooling.some((r) => coilOf(r) !== undefined),
    blower: !blower.tables.some((t) => t.points.some((p) => p.power !== undefined)),
    tests: !seasons.usHeating.season.ok && !seasons.europe.season.ok,
  };
  return gapNames.filter((g) => found[g]);
}

/** Rows that no unit gives: less heat than electricity, or heating that grows as it gets colder with all else equal. */
function oddRows(rows: readonly UnitRow[]): readonly UnitRow[] {
  const heating = rows.filter((r) => r.mode === 'heating');
  return heating.filter(
    (r) =>
      r.capacity < r.power ||
      heating.some(
        (o) =>
          o.speed === r.speed &&
          o.indoor === r.indoor &&
          o.defrostCounted === r.defrostCounted &&
          o.outdoor > r.outdoor &&
          o.capacity / o.power < r.capacity / r.power,
      ),
  );
}
