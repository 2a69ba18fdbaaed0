import { inOrder, type Range } from '@kneewall/project';
import { airDensity } from '../../physics/air/index.ts';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import { asGiven } from '../asGiven.ts';
import type { Found } from '../findings.ts';
import type { AirFlows, AirModel } from '../result.ts';
import { type HousePressure, housePressure } from './housePressure.ts';
import { doorShuts, leakOf, netSupply, openingOf } from './shut.ts';

/** Pa below which flue gas may come back into the rooms, by what burns. Source: `air.house-pressure`. */
const least = { heater: -2, furnace: -5, stove: -2 } as const;
const roomTemperature = 20;

/** Where a flue is open to the rooms: how far the blower alone draws the house below outdoors with the doors shut. */
export function housePressureFinding(model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  const { house } = view.project;
  if (!house.flue) return [];
  const { recorder, steps } = recordWorking();
  const burns = scenario().choice(house.flueOf);
  const value = attempt((): Range => {
    const likely = solvedHouse(model, flows, view, scenario());
    recorder.step('dp_house', 'solved', { residual: likely.residual }, likely.pressure, 'Pa', 'air.house-pressure');
    const { pressure } = spread((s) => ({ pressure: solvedHouse(model, flows, view, s).pressure }));
    return { low: pressure.low, likely: likely.pressure, high: pressure.high };
  });
  const shut = inOrder(house.rooms).filter(([, room]) => doorShuts(room, scenario()));
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
        facts: { doors: shut.length, burns },
      },
      working: steps,
    },
  ];
}

function solvedHouse(model: AirModel, flows: AirFlows, view: PlanView, s: Scenario): HousePressure {
  const leaks = view.trades.loads?.leaks ?? { ok: false, because: 'missing', paths: ['house.rooms'] };
  const coefficient = s.of(asGiven('house.airtightness', 'number', required(leaks).coefficient));
  const { exponent } = required(leaks);
  const rooms = inOrder(view.project.house.rooms);
  const shut = rooms.flatMap(([id, room]) =>
    doorShuts(room, s)
      ? [
          {
            id,
            net: netSupply(id, model, flows),
            opening: openingOf(room, s).all,
            leak: leakOf(id, leaks, coefficient),
          },
        ]
      : [],
  );
  const ids = new Set(shut.map((r) => r.id));
  // Air that leaks from ducts inside the heated rooms stays in the open part; registers elsewhere count to it too.
  const elsewhere = [...new Set(model.terminals.map((t) => t.room))].filter((id) => !ids.has(id));
  const net = elsewhere.reduce((a, id) => a + netSupply(id, model, flows), leaksInside(model, flows));
  const own = coefficient - shut.reduce((a, r) => a + r.leak.coefficient, 0);
  const solved = housePressure(
    { net, leak: { coefficient: own, exponent } },
    shut,
    airDensity(roomTemperature, model.pressure),
  );
  return solved.converged ? solved : unresolved('not-converged', 'house.airtightness');
}

const leaksInside = (model: AirModel, flows: AirFlows): number =>
  model.sections
    .filter((x) => x.place === 'inside')
    .reduce((a, x) => a + (x.side === 'supply' ? 1 : -1) * (flows.sections[x.id] ?? 0) * x.leakage, 0);
