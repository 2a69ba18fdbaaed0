import type { BlowerModel, BlowerTable } from './result.ts';

/** W a blower draws at a flow, m³/s, by a table with powers; undefined beyond its ends or without them. */
export function blowerPower(table: BlowerTable, flow: number): number | undefined {
  const points = table.points.flatMap((p) => (p.power === undefined ? [] : [{ flow: p.flow, power: p.power }]));
  const above = points.findIndex((p) => p.flow >= flow);
  const [a, b] = [points[Math.max(0, above - 1)], points[above]];
  if (!a || !b || flow < a.flow) return undefined;
  return b.flow > a.flow ? a.power + ((flow - a.flow) / (b.flow - a.flow)) * (b.power - a.power) : b.power;
}

/** W it drew at a sheet's flow: by the slowest setting that reaches it. Undefined where no table tells. */
export function ratedBlowerPower(blower: BlowerModel, flow: number): number | undefined {
  const powers = blower.tables.flatMap((t) => blowerPower(t, flow) ?? []);
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
  const now = blowerPower(at.table, at.flow);
  const rated = ratedFlow === undefined ? undefined : ratedBlowerPower(blower, ratedFlow);
  return now === undefined || rated === undefined ? 0 : now * at.thinness - rated;
}
