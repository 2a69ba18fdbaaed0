import { fanPower } from '../physics/network/index.ts';
import type { BlowerModel, BlowerTable } from './result.ts';

/** W it drew at a sheet's flow: by the slowest setting that reaches it. Undefined where no table tells. */
export function ratedBlowerPower(blower: BlowerModel, flow: number): number | undefined {
  const powers = blower.tables.flatMap((t) => fanPower(t.points, flow) ?? []);
  return powers.length > 0 ? Math.min(...powers) : undefined;
}

/**
 * W of blower heat in the air beyond what the sheet's capacity already counts; what a blower draws ends as heat in its
 * air. `thinness` is the air's density against standard air, with which power falls. 0 where the tables do not tell.
 * Source: `equipment.fan-heat`.
 */
export function extraFanHeat(
  blower: BlowerModel,
  at: { readonly table: BlowerTable; readonly flow: number; readonly thinness: number },
  ratedFlow: number | undefined,
): number {
  const now = fanPower(at.table.points, at.flow);
  const rated = ratedFlow === undefined ? undefined : ratedBlowerPower(blower, ratedFlow);
  return now === undefined || rated === undefined ? 0 : now * at.thinness - rated;
}
