import type { Given } from '@kneewall/project';
import type { LoadsResult } from '../loads/result.ts';
import { heatOfVapour } from '../physics/air/index.ts';
import { attempt, required } from '../plan/outcome.ts';
import { type Scenario, type Spread, spread } from '../plan/scenario.ts';
import { dryAirFlow } from './coil/operate.ts';
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

/** Air into the coil on that day: °C, kg/kg, and kg/kg of the rooms; m³/s at highest speed; Pa; °C outdoors. */
export type MuggyAt = {
  readonly outdoor: number;
  readonly entering: number;
  readonly enteringHumidity: number;
  readonly roomHumidity: number;
  readonly flow: number;
  readonly pressure: number;
};

/**
 * Latent heat a unit takes out while it takes a sensible load, W, and the air that it moves meanwhile, m³/s in the mean: at
 * the speed that suits it, its air following the compressor as the sheet has it; below its lowest speed it stops and
 * starts, above its highest it does what it can.
 */
export function latentBeside(
  unit: UnitModel,
  sensible: number,
  at: MuggyAt,
  s: Scenario,
): { readonly latent: number; readonly flow: number } {
  const most = s.part('most', (own) => outputAt(unit, 'most', at.flow, at, own));
  const least = s.part('least', (own) =>
    attempt(() => {
      const flowOf = (speed: UnitSpeed) => betweenRows(readSheet(unit, 'cooling', speed, at.outdoor), (r) => r.airflow);
      const [low, high] = [flowOf('least'), flowOf('most')];
      const share = low !== undefined && high !== undefined ? low / high : 1;
      return outputAt(unit, 'least', at.flow * share, at, own);
    }),
  );
  const low = least.ok && least.value.sensible < most.sensible ? least.value : most;
  if (sensible <= low.sensible) {
    const runs = sensible / low.sensible;
    return { latent: low.latent * runs, flow: low.flow * runs };
  }
  if (sensible >= most.sensible) return most;
  const share = (sensible - low.sensible) / (most.sensible - low.sensible);
  const between = (a: number, b: number): number => a + share * (b - a);
  return { latent: between(low.latent, most.latent), flow: between(low.flow, most.flow) };
}

const outputAt = (unit: UnitModel, speed: UnitSpeed, flow: number, at: MuggyAt, s: Scenario) => ({
  ...required(unitAt(unit, { ...at, mode: 'cooling', flow, speed }, correctionsOf(unit, s))),
  flow,
});

/** W of vapour that leaking returns bring to the coil in a flow of m³/s: what its air holds more than the rooms'. */
const broughtIn = (flow: number, at: MuggyAt): number =>
  dryAirFlow({ entering: { t: at.entering, w: at.enteringHumidity }, flow, pressure: at.pressure }) *
  (at.enteringHumidity - at.roomHumidity) *
  heatOfVapour;

const asGiven = (path: string, x: Spread): Given => ({
  path,
  kind: 'power',
  known: 'estimated',
  low: x.low,
  likely: x.likely,
  high: x.high,
});

/** W of latent heat on a muggy day: taken out, come into the rooms, brought by leaking returns, and left over. */
export type Muggy = {
  readonly taken: Spread;
  readonly needed: Spread;
  readonly brought: Spread;
  readonly spare: Spread;
};

export function muggyDay(unit: UnitModel, at: MuggyAt, loads: LoadsResult): Muggy {
  const load = required(loads.cooling);
  const sensible = asGiven('loads.cooling', load.sensible);
  const latent = asGiven('loads.cooling#latent', load.latent);
  return spread((s) => {
    const { latent: taken, flow } = latentBeside(unit, s.of(shareGiven) * s.of(sensible), at, s);
    const [needed, brought] = [s.of(latent), broughtIn(flow, at)];
    return { taken, needed, brought, spare: taken - needed - brought };
  });
}
