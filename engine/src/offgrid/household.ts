import type { ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import type { PowerInputs } from './result.ts';

type Household = ResolvedProject['power']['household'];

/**
 * What the household takes beside the unit, kWh a day and its hours where they are 24: as its owner took it from a log,
 * or as it was entered. The one place that says so. Source: `offgrid.learned-household`.
 */
export function householdOf({ learned, ...household }: Household, s: Scenario): PowerInputs['household'] {
  const hours = [learned.hours, household.hours].find((x) => x?.length === 24 && x.some((w) => w > 0));
  return {
    daily: s.maybe(learned.daily) ?? s.of(household.daily),
    essential: s.of(household.essential),
    shedFirst: s.choice(household.shedFirst),
    ...(hours ? { hours } : {}),
  };
}

/** The household before anything that was learned of it. */
export const householdAsEntered = (household: Household): Household => ({
  ...household,
  learned: { ...household.learned, hours: undefined, daily: { path: 'power.household.learned.daily', missing: true } },
});
