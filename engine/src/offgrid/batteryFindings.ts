import { yearsOfLife } from '../physics/power/index.ts';
import { required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import { helpOf } from './helpOf.ts';
import type { OffgridResult } from './result.ts';

/** What the battery has to answer for: cells too cold to charge (lithium), and how long it lasts. */
export function batteryFindings(result: OffgridResult, view: PlanView): Found[] {
  const lead = result.inputs.ok && result.inputs.value.battery.chemistry === 'lead-acid';
  return lead ? [life(result, view)] : [coldCells(result, view), life(result, view)];
}

function coldCells({ inputs }: OffgridResult, view: PlanView): Found {
  const source = 'offgrid.cold-cells';
  const year = view.season.power.ok ? view.season.power.value : undefined;
  const box = helpOf(view, 'warm-box');
  const facts = {
    ...(box ? { boxed: box.coldMornings } : {}),
    ...(box && year?.generator ? { boxedHours: box.generator * 3600 } : {}),
    ...(inputs.ok ? { place: inputs.value.battery.place, heater: inputs.value.battery.heater } : {}),
    ...(year ? { refused: year.refused, coldest: Math.min(...year.cell.flat()) } : {}),
  };
  const of = { id: 'cold-cells', holdPoint: 'order', consequence: 'damage', kind: 'count' } as const;
  return found({ ...of, limit: { max: 3 }, source, facts }, (recorder) => {
    const mornings = required(view.season.power).coldMornings;
    recorder.step('mornings', 'table', {}, mornings, '', source);
    return mornings;
  });
}

function life({ life: stands }: OffgridResult, view: PlanView): Found {
  const source = 'offgrid.battery-life';
  const of = { id: 'battery-life', holdPoint: 'order', consequence: 'money', kind: 'count' } as const;
  const year = view.season.power.ok ? view.season.power.value : undefined;
  return found({ ...of, limit: { min: 10 }, source, facts: year ? { cycles: year.cycles } : {} }, (recorder) => {
    const { cycles, years } = required(stands);
    const a = required(view.season.power).cycles;
    const likely = yearsOfLife(cycles.likely, a, years.likely);
    recorder.step('n_year', 'table', {}, a, '', 'power.ageing');
    recorder.step('n', 'table', {}, cycles.likely, '', 'project');
    recorder.step('y', 'table', {}, years.likely, '', 'project');
    const inputs = { y: years.likely, n: cycles.likely, n_year: a };
    if (a > 0) recorder.step('life', 'min(y, n / n_year)', inputs, likely, '', 'power.ageing');
    return { low: yearsOfLife(cycles.low, a, years.low), likely, high: yearsOfLife(cycles.high, a, years.high) };
  });
}
