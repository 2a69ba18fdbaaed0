import { type FanPoint, fanPoints } from '../../physics/network/index.ts';
import type { AirModel } from '../ductwork.ts';
import { networkOf } from '../flows.ts';
import { type AirAt, addedPressure } from '../networkParts.ts';

/** Whether a blower's table rises somewhere: then it may meet the ducts more than once. */
export const tableRises = ({ blower }: AirModel): boolean =>
  blower.points.some((p, i) => p.pressure > (blower.points[i - 1]?.pressure ?? Number.POSITIVE_INFINITY));

/**
 * Every flow at which the blower meets the ducts, doors open, within its table, by rising flow; m³/s and Pa across the
 * unit. Source: `air.operating-points`.
 */
export function operatingPoints(model: AirModel, at: AirAt): FanPoint[] {
  const [first, last] = [model.blower.points[0]?.flow ?? 0, model.blower.points.at(-1)?.flow ?? 0];
  return fanPoints(networkOf(model, at), 'blower').flatMap((p) =>
    p.flow >= first && p.flow <= last ? [{ ...p, pressure: p.pressure + addedPressure(model, p.flow) }] : [],
  );
}
