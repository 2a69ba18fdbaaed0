import { inIdOrder } from '@kneewall/project';
import { dewPoint, humidityRatio } from '../physics/air/index.ts';
import { insideFilm } from '../physics/conduction/index.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { glassGiven } from './constructions/index.ts';
import type { LoadsResult } from './result.ts';

/** Relative humidity of rooms on a cold night: dry, usual, and with washing hung indoors. */
const roomHumidity = { low: 0.3, likely: 0.4, high: 0.5 } as const;

/** The coldest glass against the dew point of the rooms on the design night: how far it stays above, K. */
export function condensation(_result: LoadsResult, view: PlanView): { draft: Draft; working: Working }[] {
  const { house } = view.project;
  const { climate } = view.trades;
  const s = scenario();
  const glazed = inIdOrder(house.openings).flatMap(([id, o]) => {
    if ('missing' in o.glazing || o.glazing.choice === 'door') return [];
    return [{ id, name: o.name ?? id, u: 'missing' in o.uValue ? glassGiven(o.glazing, 'u') : o.uValue }];
  });
  const worst = glazed.reduce<(typeof glazed)[number] | undefined>(
    (a, b) => (a && s.of(a.u) >= s.of(b.u) ? a : b),
    undefined,
  );
  if (!worst || !climate) return [];
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const outdoor = s.of(required(climate.night).outdoor);
    const pressure = required(climate.pressure);
    const indoor = s.of(house.setpoints.heating);
    const surface = indoor - s.of(worst.u) * insideFilm.horizontal * (indoor - outdoor);
    const dew = (rh: number) => dewPoint(humidityRatio({ t: indoor, rh }, pressure), pressure);
    recorder.given('U', worst.u);
    recorder.step(
      't_s',
      't_in - U * R_si * (t_in - t_out)',
      { t_in: indoor, U: s.of(worst.u), R_si: insideFilm.horizontal, t_out: outdoor },
      surface,
      '°C',
      'loads.dew-point',
    );
    recorder.step('t_dew', 'table', { RH: roomHumidity.likely }, dew(roomHumidity.likely), '°C', 'loads.dew-point');
    const likely = surface - dew(roomHumidity.likely);
    recorder.step(
      'above',
      't_s - t_dew',
      { t_s: surface, t_dew: dew(roomHumidity.likely) },
      likely,
      'K',
      'loads.dew-point',
    );
    return { low: surface - dew(roomHumidity.high), likely, high: surface - dew(roomHumidity.low) };
  });
  return [
    {
      draft: {
        id: `wet-glass:${worst.id}`,
        subject: worst.id,
        holdPoint: 'season',
        consequence: 'damage',
        kind: 'temperature-difference',
        value,
        limit: { min: 0 },
        source: 'loads.dew-point',
        working: `loads/wet-glass:${worst.id}`,
        facts: { name: worst.name },
      },
      working: steps,
    },
  ];
}
