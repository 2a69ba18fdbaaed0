import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { pumpedFlow, slowFlow, tubeHead } from './kernels/pump.ts';
import { latentHeat } from './kernels/water.ts';
import type { CondensateResult, Drain, Pumped, Risers } from './result.ts';

/** Litres an hour that the pump lifts at the height it has to. */
export function pumpedOf({ pump }: Drain, s: Scenario, rec: WorkingRecorder): Pumped {
  const of = {
    headMost: s.of(pump.headMost),
    flowMost: s.of(pump.flowMost) / 3600,
    lift: s.of(pump.lift),
    tube: s.of(pump.tube),
    tubeRun: s.of(pump.tubeRun),
  };
  const flow = pumpedFlow(of);
  if (!slowFlow(flow, of.tube)) return unresolved('out-of-range', pump.tube.path, pump.flowMost.path);
  const litres = 3.6e6 * flow;
  const k = tubeHead(of.tube, of.tubeRun);
  rec.step('k', 'table', { d: of.tube, L: of.tubeRun }, k, 'm s/m³', 'condensate.pump');
  if (litres > 0)
    rec.step(
      'litres',
      '3600000 * ((H - h) / (H / q + k))',
      { H: of.headMost, h: of.lift, q: of.flowMost, k },
      litres,
      'L/h',
      'condensate.pump',
    );
  else rec.step('litres', 'table', {}, litres, 'L/h', 'condensate.pump');
  return { litres, lift: of.lift, headMost: of.headMost, power: s.of(pump.power) };
}

type Sizes = Pick<CondensateResult, 'room' | 'fallLeast' | 'along'>;

/** The risers' least height: the trap has its room, the drain its fall, and the unit stands over the rim of its pan. */
export function risersOf(drain: Drain, { room, fallLeast, along }: Sizes, s: Scenario, rec: WorkingRecorder): Risers {
  const [risers, below] = [s.of(drain.risers), s.of(drain.below)];
  const inputs = { r: risers, room: required(room), below };
  const trap = risers + inputs.room - below;
  rec.step('for_trap', 'r + room - below', inputs, trap, 'm', 'condensate.risers');
  const falling = { r: risers, least: required(fallLeast), fall: required(along).fall };
  const fall = falling.r + falling.least - falling.fall;
  rec.step('for_fall', 'r + least - fall', falling, fall, 'm', 'condensate.risers');
  const pan = 'choice' in drain.second && drain.second.choice === 'pan';
  const rim = pan ? s.of(drain.pan.depth) : 0;
  const least = Math.max(trap, fall, rim);
  rec.step('least', 'max(max(trap, fall), rim)', { trap, fall, rim }, least, 'm', 'condensate.risers');
  return { trap, fall, rim, least };
}

/** J in a kWh. */
const kilowattHour = 3.6e6;

/** Litres by month that the house's drying comes to, and the most in an hour; 1 L weighs 1 kg. */
export function yearOfWater(
  months: readonly number[],
  peak: number,
): { months: number[]; year: number; hourMost: number } {
  const litres = months.map((heat) => (heat * kilowattHour) / latentHeat);
  return { months: litres, year: litres.reduce((a, b) => a + b, 0), hourMost: (peak * 3600) / latentHeat };
}

/** What is taken from the second outlet's or the pan's line. */
export const hasSecondLine = ({ second }: Drain): boolean =>
  'choice' in second && (second.choice === 'pan' || second.choice === 'overflow');
