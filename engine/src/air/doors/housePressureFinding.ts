import { inOrder, type Range } from '@kneewall/project';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { Found } from '../found.ts';
import type { AirResult } from '../result.ts';
import type { FlueFound } from './flueCases.ts';
import { doorShuts } from './shut.ts';

/** Pa below which flue gas may come back into the rooms, by what burns. Source: `air.house-pressure`. */
export const flueLeast = { heater: -2, furnace: -5, stove: -2 } as const;

/**
 * Where a flue is open to the rooms: how far blower and exhausts, or these alone, draw it below outdoors with the doors
 * shut, in calm air, on the cold night or in the wind, whichever is worst. Known or not, its caution stands.
 */
export function housePressureFinding(result: AirResult, view: PlanView): Found[] {
  const { house } = view.project;
  if (!house.flue) return [];
  const s = scenario();
  const { recorder, steps } = recordWorking();
  const burns = s.choice(house.flueOf);
  const exhaust = inOrder(house.exhaust).reduce((a, [, x]) => a + s.of(x.flow), 0);
  const cases = result.shut.ok ? result.shut.value.flue : [];
  const [worst] = cases;
  const value = attempt((): Range => {
    const { low, high } = required(result.housePressure);
    const { meets: likely, added, still, residual } = worst ?? unresolved('not-converged', 'house.airtightness');
    if (exhaust > 0) recorder.step('Q_exhaust', 'table', {}, exhaust, 'm³/s', 'air.house-pressure');
    if (worst?.weather !== 'calm') recorder.step('dp_still', 'solved', { residual }, still, 'Pa', 'air.weather-cases');
    recorder.step('dp_added', 'solved', { residual }, added, 'Pa', 'air.house-pressure');
    if (likely !== added)
      recorder.step(
        'dp',
        'dp_added + dp_pull',
        { dp_added: added, dp_pull: likely - added },
        likely,
        'Pa',
        'air.house-pressure',
      );
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
        kind: 'room-pressure',
        value,
        limit: { min: flueLeast[burns] },
        source: 'air.house-pressure',
        working: 'air/house-pressure',
        facts: {
          doors: shut.length,
          burns,
          exhaust,
          ...flueFacts(worst, cases),
        },
      },
      working: steps,
    },
  ];
}

/** For the words: in which weather it is worst, and what the warm house alone does to a flue on the cold night. */
function flueFacts(worst: FlueFound | undefined, cases: readonly FlueFound[]): Record<string, number | string> {
  const cold = cases.find((c) => c.weather === 'cold' && c.converged);
  return {
    blows: worst?.blows === false ? 0 : 1,
    weather: worst?.weather ?? 'calm',
    pulled: worst && worst.meets !== worst.added ? 1 : 0,
    weathers: cases.some((c) => c.weather !== 'calm') ? 1 : 0,
    ...(cold ? { cold: cold.still } : {}),
  };
}
