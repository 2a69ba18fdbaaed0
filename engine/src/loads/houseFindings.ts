import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import type { LoadsResult } from './result.ts';

type Found = { readonly draft: Draft; readonly working: Working };

/** Hours of a year. */
const yearHours = 8760;

/** What the house's own days and year have to answer for. */
export const houseFindings = (result: LoadsResult, view: PlanView): Found[] => [
  dampAir(result),
  ...morning(result, view),
];

/** How much of the year the air indoors is damp with windows kept shut. */
function dampAir(result: LoadsResult): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const hours = required(result.year).humidity.dampHours;
    recorder.step('h_damp', 'table', {}, hours, 'h', 'loads.damp');
    const inputs = { h_damp: hours, h_year: yearHours };
    recorder.step('share', 'h_damp / h_year', inputs, hours / yearHours, '', 'loads.damp');
    return hours / yearHours;
  });
  const draft: Draft = {
    id: 'damp-air',
    subject: 'house',
    holdPoint: 'season',
    consequence: 'damage',
    kind: 'fraction',
    value,
    limit: { max: 0.1 },
    source: 'loads.damp',
    working: 'loads/damp-air',
  };
  return { draft, working: steps };
}

/** What a lowered night asks of the unit in the morning. Only where the night is lowered. */
function morning(result: LoadsResult, view: PlanView): Found[] {
  const { nightSetback } = view.project.house.setpoints;
  if ('missing' in nightSetback || nightSetback.likely === 0) return [];
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const days = required(result.days);
    const [flat, lowered] = [days.night.house, days.recovery.night.house];
    recorder.step('Q_flat', 'table', {}, flat, 'W', 'loads.morning');
    recorder.step('Q_morning', 'table', {}, lowered, 'W', 'loads.morning');
    const inputs = { Q_morning: lowered, Q_flat: flat };
    recorder.step('more', 'Q_morning / Q_flat - 1', inputs, lowered / flat - 1, '', 'loads.morning');
    return lowered / flat - 1;
  });
  return [
    {
      draft: {
        id: 'morning',
        subject: 'house',
        holdPoint: 'season',
        consequence: 'comfort',
        kind: 'fraction',
        value,
        limit: { max: 0.2 },
        source: 'loads.morning',
        working: 'loads/morning',
        facts: { setback: nightSetback.likely },
      },
      working: steps,
    },
  ];
}
