import type { ResolvedProject } from '@kneewall/project';
import { houseCase } from '../../loads/dynamic/houseCase.ts';
import { asEntered } from '../../loads/learned/learnedHouse.ts';
import { type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { TradeResults } from '../../results.ts';
import { sheetOnly } from '../logFit/sheetOnly.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';
import type { LogEffectInputs } from './logEffectJob.ts';

/** The log whose values are told: of several that say enough the one that ends last. */
export function toldLog({ logs }: Pick<TradeResults['commissioning'], 'logs'>) {
  const told = logs.flatMap(({ id, name, learned }) => {
    if (!learned.ok) return [];
    const { house, power, to } = learned.value;
    const loss = 'weak' in house ? undefined : house.times;
    return loss || power ? [{ id, name, to, ...(loss ? { loss } : {}), ...(power ? { draw: power } : {}) }] : [];
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
  const { loss, draw } = told;
  return {
    ...unit,
    house,
    night,
    unit: { ...unit.unit, model: sheetOnly(unit.unit.model) },
    ...(loss ? { loss } : {}),
    ...(draw ? { draw } : {}),
    ...(own.ok ? { own: required(own) } : {}),
  };
}
