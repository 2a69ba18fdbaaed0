import { dewPoint } from '../physics/air/index.ts';
import { jacketTemperature } from '../physics/moisture/index.ts';
import { attempt, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { AirModel } from './ductwork.ts';
import type { Found } from './found.ts';

/** Air that leaves a cooling coil, °C. Source: `air.jacket` (common practice). */
const coldSupply = 13;

/** The hour, sun time, in which it has cooled outdoors and the unit still cools; and how far the air's water may be off. Source: `air.jacket`. */
const evening = 21;
const damper = 1.15;
const drier = 0.85;

/** The thinnest jacket outside the rooms in the muggy evening of the hot day: how far it stays above the dew point. */
export function jacketFinding(model: AirModel, view: PlanView): Found[] {
  const outside = model.sections.filter((x) => x.side === 'supply' && x.place !== 'inside');
  const [thinnest] = [...outside].sort((a, b) => a.insulation - b.insulation || (a.id < b.id ? -1 : 1));
  const { climate } = view.trades;
  if (!thinnest || !climate) return [];
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const day = required(climate.day);
    const pressure = required(climate.pressure);
    const air = day.hours[evening]?.outdoor ?? day.outdoor.likely;
    // Fog is as damp as air gets.
    const dewOf = (share: number): number => Math.min(air, dewPoint(share * day.humidityRatio, pressure));
    const dew = dewOf(1);
    const surface = jacketTemperature(air, coldSupply, thinnest.insulation);
    const inputs = { t: air, t_duct: coldSupply, R: thinnest.insulation, R_s: 0.1 };
    recorder.step('t_jacket', 't - (t - t_duct) * R_s / (R + R_s)', inputs, surface, '°C', 'air.jacket');
    recorder.step('t_dew', 'table', {}, dew, '°C', 'air.jacket');
    recorder.step('above', 't_jacket - t_dew', { t_jacket: surface, t_dew: dew }, surface - dew, 'K', 'air.jacket');
    return { low: surface - dewOf(damper), likely: surface - dew, high: surface - dewOf(drier) };
  });
  return [
    {
      draft: {
        id: 'jacket',
        subject: thinnest.id,
        holdPoint: 'close',
        consequence: 'damage',
        kind: 'temperature-difference',
        value,
        limit: { min: 0 },
        source: 'air.jacket',
        working: 'air/jacket',
        facts: { name: thinnest.name },
      },
      working: steps,
    },
  ];
}
