import { airDensity } from '../../physics/air/index.ts';
import { compileFan, fanPressure } from '../../physics/network/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import type { AirModel } from '../ductwork.ts';
import { type AirAt, addedPressure, standardDensity, unitLinks } from '../networkParts.ts';

/** Pa: what the blower gives at the flow, what its sheet allows, what filter and additions take, what is left for ducts. */
export type UnitPressure = {
  readonly blower: number;
  readonly allowed?: number;
  readonly filter: number;
  readonly added: number;
  readonly left: number;
};

/** Ends the enclosing attempt where the flow lies beyond the blower's table. `left` may be negative: the filter took it all. */
export function unitPressure(model: AirModel, at: AirAt, flow: number, staticMost?: number): UnitPressure {
  const { points } = model.blower;
  const slack = 1e-9;
  if (flow < (points[0]?.flow ?? 0) - slack || flow > (points.at(-1)?.flow ?? 0) + slack)
    return unresolved('out-of-range', 'candidates.*.blower.speeds');
  const thinness = airDensity(at.returnTemperature, model.pressure) / standardDensity;
  const links = unitLinks(model, thinness);
  const filter = links.reduce((a, l) => a + (l.kind === 'power' ? l.coefficient * flow ** l.exponent : 0), 0);
  const free = links.reduce((a, l) => a + (l.kind === 'fan' ? fanPressure(compileFan(l.points), flow) : 0), 0);
  const added = addedPressure(model, flow);
  const given = free - filter;
  return {
    blower: free + added,
    ...(staticMost === undefined ? {} : { allowed: staticMost }),
    filter,
    added,
    left: staticMost === undefined ? given : Math.min(given, staticMost - filter - added),
  };
}
