import { ductHeatOf } from '../air/ductHeat.ts';
import type { AirModel } from '../air/ductwork.ts';
import { placedSolver } from '../air/flows.ts';
import { atticTemperature } from '../loads/attic.ts';
import { humidityRatio } from '../physics/air/index.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { TradeResults } from '../results.ts';
import { type Agreement, noAgreement } from './agreement.ts';
import { type Point, type Settled, settle } from './settle.ts';

/** What the rooms are kept at: °C winter and summer, and the summer's relative humidity. */
export type Setpoints = { readonly heating: number; readonly cooling: number; readonly humidity: number };

type Mode = 'heating' | 'cooling';

const residualWanted = 1e-11;

/** What the trades designed: of the air its ducts alone. */
export type Designed = Pick<TradeResults, 'climate' | 'loads' | 'equipment'> & { readonly ducts: Outcome<AirModel> };

/**
 * Lets air, equipment and loads agree at the cold night and the hot hour: flow, entering and leaving air, duct gains
 * and the attic's temperature exchanged until nothing moves by more than 1e-11 of its scale. Capped at 60 sweeps;
 * a point that has not settled is reported so and used by nobody as if it had.
 */
export function agree(results: Designed, setpoints: Setpoints): Agreement {
  const heating = agreePoint(results, setpoints, 'heating');
  const cooling = agreePoint(results, setpoints, 'cooling');
  const points = [heating, cooling].flatMap((p) => (p.ok ? [p.value] : []));
  if (points.length === 0) return noAgreement;
  return {
    converged: points.every((p) => p.converged),
    sweeps: Math.max(...points.map((p) => p.sweeps)),
    residual: Math.max(...points.map((p) => p.residual)),
    ...(heating.ok ? { heating: heating.value.point } : {}),
    ...(cooling.ok ? { cooling: cooling.value.point } : {}),
  };
}

function agreePoint(results: Designed, setpoints: Setpoints, mode: Mode): Outcome<Settled> {
  return attempt(() => settle(pointFrom(results, setpoints, mode)));
}

function pointFrom({ climate, loads, equipment, ducts }: Designed, setpoints: Setpoints, mode: Mode): Point {
  const chosen = equipment.candidates[required(equipment.chosen)];
  if (!chosen) throw new Error('assert: the chosen unit is not among the candidates');
  const pressure = required(climate.pressure);
  const model = required(ducts);
  const indoor = mode === 'heating' ? setpoints.heating : setpoints.cooling;
  const attic = required(loads.attic);
  const outdoor = mode === 'heating' ? required(climate.night).outdoor.likely : outdoorAtPeak(climate, loads);
  return {
    mode,
    unit: chosen.unit,
    blower: chosen.blower,
    air: model,
    attic: (ductHeat) => atticTemperature(attic, { mode, outdoor, indoor, ductHeat }),
    outdoor,
    indoor,
    indoorHumidity:
      mode === 'heating'
        ? required(climate.night).humidityRatio
        : humidityRatio({ t: indoor, rh: setpoints.humidity }, pressure),
    pressure,
    solve: placedSolver(),
    heat: ductHeatOf(model),
    speed: 'most',
    strips: 0,
    residual: residualWanted,
  };
}

/** Outdoor air at the hour in which the house needs most cooling. */
function outdoorAtPeak(climate: TradeResults['climate'], loads: TradeResults['loads']): number {
  const { hour } = required(loads.cooling);
  const day = required(climate.day);
  return day.hours.find((h) => h.hour === hour)?.outdoor ?? day.outdoor.likely;
}
