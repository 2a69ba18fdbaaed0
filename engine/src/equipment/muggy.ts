import type { Given } from '@kneewall/project';
import type { LoadsResult } from '../loads/result.ts';
import { attempt, required } from '../plan/outcome.ts';
import { type Scenario, type Spread, spread } from '../plan/scenario.ts';
import { correctionsOf } from './corrections.ts';
import type { UnitModel, UnitSpeed } from './result.ts';
import { betweenRows, readSheet } from './sheet.ts';
import { unitAt } from './unitAt.ts';

/** Sensible load of a muggy day as a share of the hot afternoon's; its latent load is the same. Source: `equipment.muggy`. */
const shareGiven: Given = {
  path: 'loads.cooling#muggy',
  kind: 'fraction',
  known: 'assumed',
  low: 0.3,
  likely: 0.5,
  high: 0.7,
};

/** Air into the coil on that day: °C, kg/kg; m³/s at highest speed; Pa; °C outdoors. */
export type MuggyAt = {
  readonly outdoor: number;
  readonly entering: number;
  readonly enteringHumidity: number;
  readonly flow: number;
  readonly pressure: number;
};

/**
 * Latent heat a unit takes out while it takes a sensible load, W: at the speed that suits it, its air following the
 * compressor as the sheet has it; below its lowest speed it stops and starts, above its highest it does what it can.
 */
export function latentBeside(unit: UnitModel, sensible: number, at: MuggyAt, s: Scenario): number {
  const most = s.part('most', (own) => required(outputAt(unit, 'most', at.flow, at, own)));
  const least = s.part('least', (own) =>
    attempt(() => {
      const flowOf = (speed: UnitSpeed) => betweenRows(readSheet(unit, 'cooling', speed, at.outdoor), (r) => r.airflow);
      const [low, high] = [flowOf('least'), flowOf('most')];
      const share = low !== undefined && high !== undefined ? low / high : 1;
      return required(outputAt(unit, 'least', at.flow * share, at, own));
    }),
  );
  const low = least.ok && least.value.sensible < most.sensible ? least.value : most;
  if (sensible <= low.sensible) return low.latent * (sensible / low.sensible);
  if (sensible >= most.sensible) return most.latent;
  const share = (sensible - low.sensible) / (most.sensible - low.sensible);
  return low.latent + share * (most.latent - low.latent);
}

const outputAt = (unit: UnitModel, speed: UnitSpeed, flow: number, at: MuggyAt, s: Scenario) =>
  unitAt(unit, { ...at, mode: 'cooling', flow, speed }, correctionsOf(unit, s));

const asGiven = (path: string, x: Spread): Given => ({
  path,
  kind: 'power',
  known: 'estimated',
  low: x.low,
  likely: x.likely,
  high: x.high,
});

/** W of latent heat taken out, needed, and left over on a muggy day. */
export type Muggy = { readonly taken: Spread; readonly needed: Spread; readonly spare: Spread };

export function muggyDay(unit: UnitModel, at: MuggyAt, loads: LoadsResult): Muggy {
  const load = required(loads.cooling);
  const sensible = asGiven('loads.cooling', load.sensible);
  const latent = asGiven('loads.cooling#latent', load.latent);
  return spread((s) => {
    const taken = latentBeside(unit, s.of(shareGiven) * s.of(sensible), at, s);
    const needed = s.of(latent);
    return { taken, needed, spare: taken - needed };
  });
}
