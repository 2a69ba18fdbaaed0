import type { ResolvedProject } from '@kneewall/project';
import type { HouseLeaks } from '../../loads/result.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, type Spread, scenario } from '../../plan/scenario.ts';
import { inTable, nominalAir, type SolvedFlows } from '../flows.ts';
import type { AirModel, AirResult } from '../result.ts';
import { houseAir } from './shut.ts';
import { type ShutCases, shutCases, shutPressures } from './shutCases.ts';
import { withEnough } from './shutDoors.ts';

type Solved = { readonly model: AirModel; readonly open: SolvedFlows };

export type ShutDesign = {
  /** Pa by output for one reading of the project; nothing where nobody asks. */
  readonly pressures: (model: AirModel, open: SolvedFlows, s: Scenario) => Readonly<Record<string, number>>;
  /** Its part of the trade's result, with the spreads that came of those pressures. */
  readonly result: (
    pick: (key: string) => Outcome<Spread>,
  ) => Pick<AirResult, 'shut' | 'doorPressures' | 'housePressure'>;
};

/** The house with its doors shut: the likely case, and how to read it in others. `solved`: the same with all doors open. */
export function shutDesign(
  house: ResolvedProject['house'],
  leaks: Outcome<HouseLeaks>,
  solved: Outcome<Solved>,
): ShutDesign {
  const solve = shutCases();
  const shut = attempt((): ShutCases => {
    const { model, open } = required(solved);
    const given = houseAir(house, leaks, scenario());
    const cases = solve(model, open, given);
    inTable(cases.blower, model);
    if (cases.exhausting) inTable(cases.exhausting.on, model);
    return { ...cases, blower: withEnough(cases.blower, model, nominalAir, open, { ...given, exhaust: {} }) };
  });
  const rooms = shut.ok ? Object.keys(shut.value.blower.rooms) : [];
  // Nobody asks for the pressure of a house without a flue.
  const asked = shut.ok && (house.flue === true || rooms.length > 0);
  return {
    pressures: (model, open, s) => (asked ? shutPressures(solve(model, open, houseAir(house, leaks, s))) : {}),
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

/** A reading without an answer leaves a spread without a number. */
const finite = (found: Outcome<Spread>): Outcome<Spread> =>
  attempt(() => {
    const spread = required(found);
    return Number.isFinite(spread.high - spread.low) ? spread : unresolved('not-converged', 'house.airtightness');
  });
