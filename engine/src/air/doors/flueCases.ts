import type { AirModel } from '../ductwork.ts';
import { nominalAir, type PlacedFlows } from '../flows.ts';
import type { HouseAir, ShutDoors } from './houseAir.ts';
import { shutSolver } from './shutDoors.ts';
import { calm, type WeatherCase, type WeatherId } from './weathers.ts';

/** The flue: the room it stands in where its door is shut, m of its hood above the lowest floor, and whether it starts cold. */
export type Flue = { readonly room?: string; readonly height: number; readonly cold: boolean };

/** What a flue meets in one weather, the blower on or off and every exhaust on. Pa where it stands, against outdoors there. */
export type FlueCase = {
  readonly weather: WeatherId;
  readonly blows: boolean;
  /** By weather alone, and what blower and exhausts add to it. */
  readonly still: number;
  readonly added: number;
  /** What has to be judged: what is added; for a flue that starts cold also the pull of the warm house. */
  readonly meets: number;
  readonly converged: boolean;
  readonly residual: number;
};

/** Solves one case after the other for like systems. */
export type FlueSolver = (
  model: AirModel,
  open: PlacedFlows,
  house: HouseAir,
  flue: Flue,
  of: WeatherCase,
  blows: boolean,
) => FlueCase;

/** Of the largest drop: through a blower that stands, pressures are not told apart any finer. */
const roughly = 1e-10;

/**
 * The limits of flues are for what fans do: tests take off what weather did before they ran. A flue as warm as the rooms
 * gains more from the cold than the house does, for it is taller; one as cold as outdoors gains nothing, so that the pull
 * of the house is its own to overcome. Wind pulls at the flue's top as well and is not held against it.
 */
export function flueSolver(): FlueSolver {
  const [loaded, still] = [shutSolver(roughly), shutSolver(roughly)];
  return (model, open, house, flue, of, blows) => {
    const there: HouseAir = { ...house, ...(of.weather ? { weather: of.weather } : {}) };
    const at = (shut: ShutDoors): number =>
      (shut.rooms[flue.room ?? '']?.outdoors ?? shut.house) + (of.weather?.rise ?? 0) * flue.height;
    const stands = standing(model);
    const on = loaded(blows ? model : stands, nominalAir, open, there);
    const off = of.weather ? still(stands, nominalAir, open, { ...there, exhaust: {} }) : undefined;
    const before = off ? at(off) : 0;
    const added = at(on) - before;
    const pull = flue.cold && of.id === 'cold' ? Math.min(0, before) : 0;
    const converged = on.converged && (off?.converged ?? true);
    return { weather: of.id, blows, still: before, added, meets: added + pull, converged, residual: on.residual };
  };
}

/** A blower that stands is as good as a wall: 1 MPa for one m³/s. */
const standing = (model: AirModel): AirModel => {
  const points = [-1, 1].map((flow) => ({ flow, pressure: -1e6 * flow }));
  return { ...model, blower: { ...model.blower, points } };
};

export type FlueFound = FlueCase & { readonly of: WeatherCase };

/** Every case, worst first; one without an answer stands before all, so that nothing worse can hide behind it. */
export function flueCases(
  model: AirModel,
  open: PlacedFlows,
  house: HouseAir,
  flue: Flue,
  weathers: readonly WeatherCase[],
): readonly FlueFound[] {
  const solve = flueSolver();
  const exhausts = Object.values(house.exhaust).some((q) => q > 0);
  const cases = [calm, ...weathers].flatMap((of) =>
    (exhausts ? [true, false] : [true]).map((blows) => ({ ...solve(model, open, house, flue, of, blows), of })),
  );
  const rank = (c: FlueCase): number => (c.converged ? c.meets : Number.NEGATIVE_INFINITY);
  return cases.sort((a, b) => rank(a) - rank(b) || 0);
}
