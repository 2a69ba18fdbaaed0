import { inOrder, type Range } from '@kneewall/project';
import { attempt, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { Found } from '../findings.ts';
import type { AirResult } from '../result.ts';
import { doorShuts } from './shut.ts';
import { worstCase } from './shutCases.ts';

/** Pa below which flue gas may come back into the rooms, by what burns. Source: `air.house-pressure`. */
const least = { heater: -2, furnace: -5, stove: -2 } as const;

/** Where a flue is open to the rooms: how far blower and exhausts, or these alone, draw the house below outdoors with the doors shut. */
export function housePressureFinding(result: AirResult, view: PlanView): Found[] {
  const { house } = view.project;
  if (!house.flue) return [];
  const s = scenario();
  const { recorder, steps } = recordWorking();
  const burns = s.choice(house.flueOf);
  const exhaust = inOrder(house.exhaust).reduce((a, [, x]) => a + s.of(x.flow), 0);
  const value = attempt((): Range => {
    const { low, high } = required(result.housePressure);
    const { house: likely, residual } = worstCase(required(result.shut)).house;
    if (exhaust > 0) recorder.step('Q_exhaust', 'table', {}, exhaust, 'm³/s', 'air.house-pressure');
    recorder.step('dp_house', 'solved', { residual }, likely, 'Pa', 'air.house-pressure');
    return { low, likely, high };
  });
  const shut = inOrder(house.rooms).filter(([, room]) => doorShuts(room, s));
  return [
    {
      draft: {
        id: 'house-pressure',
        subject: 'house',
        holdPoint: 'start',
        consequence: 'harm',
        kind: 'pressure',
        value,
        limit: { min: least[burns] },
        source: 'air.house-pressure',
        working: 'air/house-pressure',
        facts: {
          doors: shut.length,
          burns,
          exhaust,
          blows: result.shut.ok && !worstCase(result.shut.value).blows ? 0 : 1,
        },
      },
      working: steps,
    },
  ];
}
