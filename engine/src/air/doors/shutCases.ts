import { nominalAir, type SolvedFlows } from '../flows.ts';
import type { AirModel } from '../result.ts';
import type { HouseAir, ShutDoors } from './houseAir.ts';
import { shutSolver } from './shutDoors.ts';

/** The blower alone, which is what rooms are judged by; and every exhaust on beside it, which is what a flue meets. */
export type ShutCases = { readonly blower: ShutDoors; readonly worst: ShutDoors };

/** Solves both cases for like systems one after the other. */
export function shutCases(): (model: AirModel, open: SolvedFlows, house: HouseAir) => ShutCases {
  const [still, drawn] = [shutSolver(), shutSolver()];
  return (model, open, house) => {
    const blower = still(model, nominalAir, open, { ...house, exhaust: {} });
    const exhausting = Object.values(house.exhaust).some((q) => q > 0);
    return { blower, worst: exhausting ? drawn(model, nominalAir, open, house) : blower };
  };
}

/** Pa by room and of the house, for a spread; a case without an answer has no number. */
export function shutPressures({ blower, worst }: ShutCases): Record<string, number> {
  const known = (from: ShutDoors, value: number): number => (from.converged ? value : Number.NaN);
  return {
    house: known(worst, worst.house),
    ...Object.fromEntries(Object.entries(blower.rooms).map(([id, r]) => [`door:${id}`, known(blower, r.pressure)])),
  };
}
