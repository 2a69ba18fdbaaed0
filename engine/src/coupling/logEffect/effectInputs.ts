import type { ResolvedProject } from '@kneewall/project';
import { houseCase } from '../../loads/dynamic/houseCase.ts';
import { asEntered } from '../../loads/learned/learnedHouse.ts';
import { householdAsEntered, householdOf } from '../../offgrid/household.ts';
import { type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { TradeResults } from '../../results.ts';
import { sheetOnly } from '../logFit/sheetOnly.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';
import type { LogEffectInputs } from './logEffectJob.ts';

/** The log whose values are told: of several that say enough the one that ends last. */
export function toldLog({ logs }: Pick<TradeResults['commissioning'], 'logs'>) {
  const told = logs.flatMap(({ id, name, learned }) => {
    if (!learned.ok) return [];
    const { house, power: draw, beside, to } = learned.value;
    const loss = 'weak' in house ? undefined : house.times;
    const household = beside?.household?.heats === false ? beside.household : undefined;
    const found = { ...(loss ? { loss } : {}), ...(draw ? { draw } : {}), ...(household ? { household } : {}) };
    return Object.keys(found).length > 0 ? [{ id, name, to, ...found }] : [];
  });
  return told.sort((a, b) => b.to - a.to || (a.id < b.id ? -1 : 1))[0];
}

/** The plan by itself and what its log told. Ends the enclosing attempt while no log has told anything. */
export function effectInputs(
  project: ResolvedProject,
  { climate, commissioning }: Partial<Pick<TradeResults, 'climate' | 'commissioning'>>,
  unit: UnitYearInputs,
  own: Outcome<NonNullable<LogEffectInputs['own']>>,
): LogEffectInputs {
  const told = commissioning ? toldLog(commissioning) : undefined;
  if (!told || !climate) return unresolved('missing', 'logs');
  const { house, night } = houseCase({ house: asEntered(project.house), site: project.site }, climate);
  const { loss, draw, household } = told;
  if (!loss && !draw && !own.ok) return unresolved('missing', 'logs');
  return {
    ...unit,
    house,
    night,
    unit: { ...unit.unit, model: sheetOnly(unit.unit.model) },
    ...(loss ? { loss } : {}),
    ...(draw ? { draw } : {}),
    ...(own.ok ? ownBefore(project, required(own)) : {}),
    ...(own.ok && household ? { household: { daily: household.daily, hours: household.hours } } : {}),
  };
}

/** Own power with the household as it was entered. */
const ownBefore = (
  { power: { household } }: ResolvedProject,
  { power, standing }: NonNullable<LogEffectInputs['own']>,
) => ({
  own: { power: { ...power, household: householdOf(householdAsEntered(household), scenario()) }, standing },
});
