import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../../climate/result.ts';
import type { LoadsResult } from '../../loads/result.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, type Spread, scenario } from '../../plan/scenario.ts';
import type { AirModel } from '../ductwork.ts';
import { inTable, nominalAir, type PlacedFlows } from '../flows.ts';
import type { AirResult } from '../result.ts';
import { doorWays } from './doorWork.ts';
import { type Flue, flueCases, flueSolver } from './flueCases.ts';
import { type Heights, leakHeights } from './leakPlaces.ts';
import { doorShuts, houseAir } from './shut.ts';
import { doorsInWeather, type ShutCases } from './shutCases.ts';
import { shutSolver, withEnough } from './shutDoors.ts';
import { calm, type WeatherCase, weatherCases } from './weathers.ts';

type Solved = { readonly model: AirModel; readonly open: PlacedFlows };
type House = ResolvedProject['house'];

/** m of a draught hood, or of a stove's collar, above its floor. Source: `air.house-pressure` (common practice). */
const hoodHeight = 1;

export type ShutDesign = {
  /** Pa by output for one reading of the project; nothing where nobody asks. */
  readonly pressures: (model: AirModel, open: PlacedFlows, s: Scenario) => Readonly<Record<string, number>>;
  /** Its part of the trade's result, with the spreads that came of those pressures. */
  readonly result: (
    pick: (key: string) => Outcome<Spread>,
  ) => Pick<AirResult, 'shut' | 'doorPressures' | 'housePressure'>;
};

/** The house with its doors shut: the likely case, and how to read it in others. `solved`: the same with all doors open. */
export function shutDesign(
  house: House,
  { climate, loads }: { readonly climate: ClimateResult; readonly loads: LoadsResult },
  solved: Outcome<Solved>,
): ShutDesign {
  const { leaks } = loads;
  const heights = leakHeights(house, leaks.ok ? leaks.value.faces : {}, scenario());
  const flue = house.flue ? flueOf(house, heights) : undefined;
  const weathers = (s: Scenario): readonly WeatherCase[] => inWeather(house, climate, loads, s);
  const shut = attempt((): ShutCases => {
    const { model, open } = required(solved);
    const given = houseAir(house, leaks, heights, scenario());
    const alone = { ...given, exhaust: {} };
    const blower = inTable(shutSolver()(model, nominalAir, open, alone), model);
    const cases = leaks.ok ? weathers(scenario()) : [];
    const judged = withEnough(blower, model, nominalAir, open, alone);
    return {
      blower: judged,
      house: alone,
      ways: doorWays(house, judged),
      doors: doorsInWeather(model, open, given, cases),
      flue: flue ? flueCases(model, open, given, flue, cases) : [],
    };
  });
  const rooms = shut.ok ? Object.keys(shut.value.blower.rooms) : [];
  const [worst] = shut.ok ? shut.value.flue : [];
  const [alone, met] = [shutSolver(), flueSolver()];
  /** A reading without an answer has no number. The worst case of the likely reading is followed through the others. */
  const pressures = (model: AirModel, open: PlacedFlows, s: Scenario): Record<string, number> => {
    if (!worst && rooms.length === 0) return {};
    const given = s.part('house air', (own) => houseAir(house, leaks, heights, own));
    const { converged, rooms: behind } = alone(model, nominalAir, open, { ...given, exhaust: {} });
    const doors = Object.entries(behind).map(([id, r]) => [`door:${id}`, converged ? r.pressure : Number.NaN]);
    if (!worst || !flue) return Object.fromEntries(doors);
    const of =
      s.part('weathers', weathers).find((w) => w.id === worst.weather && w.weather?.from === worst.of.weather?.from) ??
      calm;
    const found = met(model, open, given, flue, of, worst.blows);
    return { house: found.converged ? found.meets : Number.NaN, ...Object.fromEntries(doors) };
  };
  return {
    pressures,
    result: (pick) => ({
      shut,
      doorPressures: Object.fromEntries(rooms.map((id) => [id, finite(pick(`door:${id}`))])),
      housePressure: attempt(() => {
        required(shut);
        required(leaks);
        return house.flue ? required(finite(pick('house'))) : unresolved('missing', 'house.flue');
      }),
    }),
  };
}

/** Where the flue stands: in a room of its own with its door shut, or in all that is open to the hall. */
function flueOf(house: House, { floors }: Heights): Flue {
  const s = scenario();
  const id = house.flueRoom ?? '';
  const room = house.rooms[id];
  return {
    ...(room && doorShuts(room, s) ? { room: id } : {}),
    height: (floors[id] ?? 0) + hoodHeight,
    cold: s.choice(house.flueRuns) === 'outside',
  };
}

/** Cold and windy weather of this place; nothing of it where climate or house are not known. */
function inWeather(house: House, climate: ClimateResult, loads: LoadsResult, s: Scenario): readonly WeatherCase[] {
  const cases = attempt(() =>
    weatherCases({
      indoor: s.of(house.setpoints.heating),
      outdoor: s.of(required(climate.night).outdoor),
      envelope: required(loads.leakage),
      pressure: required(climate.pressure),
    }),
  );
  return cases.ok ? cases.value : [];
}

/** A reading without an answer leaves a spread without a number. */
const finite = (found: Outcome<Spread>): Outcome<Spread> =>
  attempt(() => {
    const spread = required(found);
    return Number.isFinite(spread.high - spread.low) ? spread : unresolved('not-converged', 'house.airtightness');
  });
