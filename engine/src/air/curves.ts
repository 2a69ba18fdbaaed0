import { airDensity } from '../physics/air/index.ts';
import { compileFan, fanPressure } from '../physics/network/index.ts';
import type { AirFlows, AirModel } from './ductwork.ts';
import { nominalAir, placedSolver } from './flows.ts';
import { addedPressure, standardDensity, unitLinks } from './networkParts.ts';

/** m³/s at the blower, Pa from return to supply plenum. */
export type CurvePoint = { readonly flow: number; readonly pressure: number };

/** Blower and ducts over one axis of flow; both in the air of this place. */
export type AirCurves = {
  /** As it is read between the rows of its table, from the first row to the last. */
  readonly blower: readonly CurvePoint[];
  /** The rows themselves. */
  readonly rows: readonly CurvePoint[];
  /** What ducts, registers and filter take, from nothing up: solved, not scaled. */
  readonly system: readonly CurvePoint[];
  /** Where the two meet. */
  readonly operating: CurvePoint;
};

/** Times the blower's pressure at which the ducts are solved again: about even steps of flow. */
const steps = [0.02, 0.1, 0.25, 0.5, 1.5, 2.2, 3] as const;
/** Samples of the blower's curve between its ends. */
const samples = 32;

/**
 * The two curves that meet where the blower runs. The ducts' own is found by solving the whole network behind the same
 * blower made weaker and stronger; solves that do not converge and flows beyond the table's last are left out.
 */
export function curvesOf(model: AirModel, flows: AirFlows, start: Float64Array): AirCurves {
  const thinness = airDensity(nominalAir.returnTemperature, model.pressure) / standardDensity;
  const fan = unitLinks(model, thinness).flatMap((l) => (l.kind === 'fan' ? l.points : []));
  const curve = compileFan(fan);
  const [first, last] = [fan[0]?.flow ?? 0, fan.at(-1)?.flow ?? 0];
  const at = (flow: number): CurvePoint => ({ flow, pressure: fanPressure(curve, flow) + addedPressure(model, flow) });
  const operating = { flow: flows.flow, pressure: flows.staticPressure };
  const solve = placedSolver();
  const solved = steps.flatMap((times): CurvePoint[] => {
    const other = solve(withBlowerTimes(model, times), nominalAir, start);
    return other.converged && other.flow < last ? [{ flow: other.flow, pressure: other.staticPressure }] : [];
  });
  return {
    blower: Array.from({ length: samples + 1 }, (_, i) => at(first + ((last - first) * i) / samples)),
    rows: fan.map(({ flow }) => at(flow)),
    system: [{ flow: 0, pressure: 0 }, operating, ...solved].sort((a, b) => a.flow - b.flow),
    operating,
  };
}

const withBlowerTimes = (model: AirModel, times: number): AirModel => ({
  ...model,
  blower: {
    ...model.blower,
    points: model.blower.points.map(({ flow, pressure }) => ({ flow, pressure: pressure * times })),
  },
});
