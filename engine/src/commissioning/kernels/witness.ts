import { heatOfAir } from '../../physics/flow/index.ts';

/** m³/s that carry so many W at a difference of K, air of that density (kg/m³). Nothing without a difference. */
export const flowFromHeat = (heat: number, difference: number, density: number): number | undefined =>
  difference > 0 ? heat / (density * heatOfAir * difference) : undefined;

/** K between return and supply for so many W of sensible heat at that flow (m³/s) and density (kg/m³). */
export const splitFromDuty = (sensible: number, flow: number, density: number): number =>
  sensible / (flow * density * heatOfAir);

/**
 * m³/s that a blower moves against a pressure that was read, straight between the points of its table (rising flow,
 * falling pressure, for standard air); `thinness` is the air's density against that. Undefined beyond its ends.
 */
export function flowFromTable(
  points: readonly { readonly flow: number; readonly pressure: number }[],
  pressure: number,
  thinness: number,
): number | undefined {
  const at = pressure / thinness;
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (a && at <= a.pressure && at >= b.pressure)
      return a.pressure > b.pressure
        ? a.flow + ((a.pressure - at) / (a.pressure - b.pressure)) * (b.flow - a.flow)
        : a.flow;
  }
  return undefined;
}
