import { nominalAir, type SolvedFlows } from '../flows.ts';
import type { AirModel } from '../result.ts';
import type { HouseAir, ShutDoors } from './houseAir.ts';
import { shutSolver } from './shutDoors.ts';

/** The blower alone, which is what rooms are judged by; where there are exhausts also all of them, the blower on and off. */
export type ShutCases = {
  readonly blower: ShutDoors;
  readonly exhausting?: { readonly on: ShutDoors; readonly off: ShutDoors };
};

/** Solves all cases for like systems one after the other. */
export function shutCases(): (model: AirModel, open: SolvedFlows, house: HouseAir) => ShutCases {
  const [alone, beside, without] = [shutSolver(), shutSolver(), shutSolver()];
  return (model, open, house) => {
    const blower = alone(model, nominalAir, open, { ...house, exhaust: {} });
    if (!Object.values(house.exhaust).some((q) => q > 0)) return { blower };
    const on = beside(model, nominalAir, open, house);
    const off = without(standing(model), nominalAir, open, house);
    return { blower, exhausting: { on, off } };
  };
}

/** A blower that stands is as good as a wall: 1 MPa for one m³/s. */
const standing = (model: AirModel): AirModel => {
  const points = [-1, 1].map((flow) => ({ flow, pressure: -1e6 * flow }));
  return { ...model, blower: { ...model.blower, points } };
};

/** The case that draws the house furthest down: what a flue meets. Ducts that take in more than they lose may hide it. */
export function worstCase({ blower, exhausting }: ShutCases): { readonly house: ShutDoors; readonly blows: boolean } {
  if (!exhausting) return { house: blower, blows: true };
  const { on, off } = exhausting;
  const both = on.converged && off.converged;
  const blows = !both || on.house <= off.house;
  return { house: blows ? on : off, blows };
}

/** Pa by room and of the house, for a spread; a case without an answer has no number. */
export function shutPressures(cases: ShutCases): Record<string, number> {
  const { house } = worstCase(cases);
  const known = (from: ShutDoors, value: number): number => (from.converged ? value : Number.NaN);
  const { blower } = cases;
  return {
    house: known(house, house.house),
    ...Object.fromEntries(Object.entries(blower.rooms).map(([id, r]) => [`door:${id}`, known(blower, r.pressure)])),
  };
}
