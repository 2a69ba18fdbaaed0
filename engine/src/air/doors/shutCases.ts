import type { AirModel } from '../ductwork.ts';
import { nominalAir, type PlacedFlows } from '../flows.ts';
import type { DoorWay } from './doorWork.ts';
import type { FlueFound } from './flueCases.ts';
import type { HouseAir, ShutDoors } from './houseAir.ts';
import { shutSolver } from './shutDoors.ts';
import type { WeatherCase, WeatherId } from './weathers.ts';

/** The blower alone on a calm day, which is what rooms are judged by; the same in other weather; and what a flue meets. */
export type ShutCases = {
  readonly blower: ShutDoors;
  /** The house that was solved with the blower alone. */
  readonly house: HouseAir;
  /** Pa of each room against the hall by weather, the largest either way of what the wind may do. */
  readonly doors: Readonly<Record<string, Readonly<Partial<Record<WeatherId, number>>>>>;
  /** What to cut or buy for the rooms above the pressure allowed. */
  readonly ways: readonly DoorWay[];
  /** Worst first; empty where no flue is open to the rooms. */
  readonly flue: readonly FlueFound[];
};

/** What weather makes of the pressure behind each shut door, the blower on and no exhaust. */
export function doorsInWeather(
  model: AirModel,
  open: PlacedFlows,
  house: HouseAir,
  weathers: readonly WeatherCase[],
): ShutCases['doors'] {
  const solve = shutSolver();
  const found: Record<string, Partial<Record<WeatherId, number>>> = {};
  for (const { id, weather } of weathers) {
    const { converged, rooms } = solve(model, nominalAir, open, {
      ...house,
      exhaust: {},
      ...(weather ? { weather } : {}),
    });
    if (!converged) continue;
    for (const [room, { pressure }] of Object.entries(rooms)) {
      const known = found[room] ?? {};
      if (Math.abs(pressure) > Math.abs(known[id] ?? 0)) known[id] = pressure;
      found[room] = known;
    }
  }
  return found;
}
