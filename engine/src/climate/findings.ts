import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import type { Drafts } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { ClimateResult } from './result.ts';

/** What the climate itself has to answer for. */
export function findings(result: ClimateResult): Drafts {
  const night = recordWorking();
  const doubt = recordWorking();
  const drafts: Draft[] = [
    {
      id: 'cold-night-doubt',
      subject: 'site',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'temperature-difference',
      value: attempt(() => {
        const { outdoor } = required(result.night);
        const width = outdoor.high - outdoor.low;
        doubt.recorder.step('low', 'given', {}, outdoor.low, '°C', 'project');
        doubt.recorder.step('high', 'given', {}, outdoor.high, '°C', 'project');
        doubt.recorder.step(
          'doubt',
          'high - low',
          { high: outdoor.high, low: outdoor.low },
          width,
          'K',
          'climate.settled',
        );
        return width;
      }),
      limit: { max: 4 },
      source: 'climate.settled',
      working: 'climate/cold-night-doubt',
    },
  ];
  // With months that were themselves guessed from the cold night there is nothing to hold it against.
  if (result.basis !== 'assumed')
    drafts.push({
      id: 'cold-night',
      subject: 'site',
      holdPoint: 'decide',
      consequence: 'damage',
      kind: 'temperature-difference',
      value: attempt(() => {
        const coldest = Math.min(...required(result.months).map((m) => m.mean));
        const { outdoor } = required(result.night);
        const below = coldest - outdoor.likely;
        night.recorder.given('t_night', outdoor);
        night.recorder.step('t_month', 'table', {}, coldest, '°C', 'project');
        night.recorder.step(
          'below',
          't_month - t_night',
          { t_month: coldest, t_night: outdoor.likely },
          below,
          'K',
          'climate.cold-night',
        );
        return below;
      }),
      limit: { min: 5, max: 22 },
      source: 'climate.cold-night',
      working: 'climate/cold-night',
    });
  return { drafts, workings: { 'climate/cold-night-doubt': doubt.steps, 'climate/cold-night': night.steps } };
}
