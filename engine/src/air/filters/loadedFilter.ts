import { attempt, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import { inTable, nominalAir, solveFlows } from '../flows.ts';
import type { Found } from '../found.ts';
import { faceFor, loadedTimes, monthsToDouble } from './life.ts';

/** Pressure that a clean filter may take so that, loaded, it still leaves half of the unit's pressure. Source: `air.filter`. */
const cleanShare = 0.2;

/**
 * The static pressure once the filter takes twice what it took clean, everything solved again, against what the unit
 * allows. Nothing to say where the unit's table counts its own filter in.
 */
export function loadedFilter(model: AirModel, flows: AirFlows, most: number | undefined, view: PlanView): Found[] {
  if (model.filter.pressure <= 0 || most === undefined) return [];
  const loaded = { ...model, filter: { ...model.filter, pressure: loadedTimes * model.filter.pressure } };
  const { recorder, steps } = recordWorking();
  const then = attempt(() => inTable(solveFlows(loaded, nominalAir), loaded));
  const value = attempt((): number => {
    const { residual, filterPressure, staticPressure } = required(then);
    const clean = { Q: flows.flow, dp_clean: flows.filterPressure };
    recorder.step('dp_filter', 'solved', { ...clean, residual }, filterPressure, 'Pa', 'air.filter-change');
    recorder.step('dp', 'solved', { residual }, staticPressure, 'Pa', 'air.flows');
    return staticPressure;
  });
  const months = monthsToDouble(scenario().of(view.project.routes.ducts.filter.thickness));
  return [
    {
      draft: {
        id: 'filter-loaded',
        subject: 'filter',
        holdPoint: 'order',
        consequence: 'money',
        kind: 'pressure',
        value,
        limit: { max: most },
        source: 'air.static',
        working: 'air/filter-loaded',
        facts: {
          clean: flows.filterPressure,
          ...(then.ok ? { loaded: then.value.filterPressure, flow: then.value.flow } : {}),
          from: months.low,
          to: months.high,
          face: faceFor(cleanShare * most, flows.flow, model.filter),
          has: model.filter.area,
        },
      },
      working: steps,
    },
  ];
}
