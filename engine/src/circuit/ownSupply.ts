import type { Given, Missing, Range, ResolvedProject } from '@kneewall/project';
import { engineAir, generatorKeeps } from '../physics/power/index.ts';
import { noting } from '../plan/noting.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { recordWorking, type Working, type WorkingRecorder } from '../plan/working.ts';
import { type Electrics, eachEnd } from './rating.ts';
import type { CircuitResult } from './result.ts';
import { startCurrent, startsHard } from './starting.ts';
import { batteryCurrent, startingPower } from './wires/ownSupply.ts';

type Power = ResolvedProject['power'];
/**
 * Share of a battery's voltage at which inverters shut off where nobody entered it: 2.8 of 3.2 V of a lithium iron phosphate
 * cell, 1.75 of 2 V of a lead one. Source: `circuit.battery`.
 */
const lowestShare = 7 / 8;

/** A number, or the end of the attempt; taken down as it is read. */
function taken(symbol: string, x: Given | Missing, recorder: WorkingRecorder): Given {
  if ('missing' in x) return unresolved('missing', x.path);
  recorder.given(symbol, x);
  return x;
}

/** What one's own supply has to carry for a unit; nothing on the grid. */
export function ownSupply(
  electrics: Electrics,
  { power, site, candidates }: Pick<ResolvedProject, 'power' | 'site' | 'candidates'>,
  workings: Record<string, Working>,
): Partial<CircuitResult> {
  const s = scenario();
  const noted = noting('circuit', workings);
  const hasGenerator = !('missing' in power.generator.power);
  return {
    battery: attempt(() => {
      const volts = s.of(power.battery.voltage);
      if (!(volts > 0)) return unresolved('missing', 'power.battery.voltage');
      // The same watts take most amperes when the battery is low: what wire and fuse have to carry.
      const lowest = s.maybe(power.inverter.voltageLeast) ?? lowestShare * volts;
      const current = batteryCurrent(s.of(power.inverter.continuous), lowest, s.of(power.inverter.efficiency));
      return { current, fuse: 1.25 * current };
    }),
    starts: Object.fromEntries(
      Object.entries(candidates).map(([id, c]) => [
        id,
        attempt(() => surgeOf(c.electrics, power, recordWorking().recorder)),
      ]),
    ),
    surge: noted('surge', (recorder) => surgeOf(electrics, power, recorder)),
    ...(legsOf(power) === 'two' ? { leg: noted('leg', (recorder) => busierLeg(electrics, power, recorder)) } : {}),
    ...(legsOf(power) === 'low'
      ? { output: noted('output', (recorder) => taken('U_unit', electrics.voltage, recorder).likely) }
      : {}),
    ...(hasGenerator
      ? {
          generator: {
            asked: noted('generator', (recorder) => askedOf(electrics, power, recorder)),
            gives: attempt(() => s.of(power.generator.power) * generatorKeeps(s.of(site.elevation), engineAir)),
          },
        }
      : {}),
  };
}

export const legsOf = (power: Power): 'one' | 'two' | 'low' | undefined =>
  'choice' in power.inverter.legs ? power.inverter.legs.choice : undefined;

/** What the motor that starts hardest takes: of those named one by one, else as it is entered for all. */
export function hardestStart({ motors, otherStart }: Power): Given | Missing {
  const starts = Object.values(motors).map((m) => m.start);
  const unsaid = starts.find((x) => 'missing' in x);
  if (unsaid) return unsaid;
  return starts.reduce<Given | Missing>(
    (a, b) => ('missing' in a || ('likely' in b && b.likely > a.likely) ? b : a),
    starts[0] ?? otherStart,
  );
}

/** The worst second: the largest other motor starts while all runs, or the compressor starts while the rest runs. */
function surgeOf(electrics: Electrics, power: Power, recorder: WorkingRecorder): Range {
  const unit = taken('P_unit', electrics.powerMost, recorder);
  const other = taken('P_other', power.otherLoad, recorder);
  const start = taken('P_start', hardestStart(power), recorder);
  const first = eachEnd((end) => unit[end] + other[end] + start[end]);
  const inputs = { P_unit: unit.likely, P_other: other.likely, P_start: start.likely };
  if (!startsHard(electrics)) {
    recorder.step('P', 'P_unit + P_other + P_start', inputs, first.likely, 'W', 'circuit.surge');
    return first;
  }
  const volts = taken('U', electrics.voltage, recorder);
  const amperes = startCurrent(electrics);
  const second = eachEnd((end) => startingPower(amperes[end], volts.likely) + other[end]);
  const worst = eachEnd((end) => Math.max(first[end], second[end]));
  const more = { ...inputs, I_start: amperes.likely, U: volts.likely };
  recorder.step(
    'P',
    'max(P_unit + P_other + P_start, I_start * U + P_other)',
    more,
    worst.likely,
    'W',
    'circuit.surge',
  );
  return worst;
}

/** W on the leg that carries more: half of a 240 V unit, all of a 120 V one, and its share of the rest. */
function busierLeg(electrics: Electrics, power: Power, recorder: WorkingRecorder): Range {
  const unit = taken('P_unit', electrics.powerMost, recorder);
  const volts = taken('U_unit', electrics.voltage, recorder);
  const other = taken('P_other', power.otherLoad, recorder);
  const busier = taken('f', power.otherOnOneLeg, recorder);
  const share = volts.likely > 150 ? 0.5 : 1;
  const leg = eachEnd((end) => share * unit[end] + busier[end] * other[end]);
  recorder.step(
    'P_leg',
    'k * P_unit + f * P_other',
    { k: share, P_unit: unit.likely, f: busier.likely, P_other: other.likely },
    leg.likely,
    'W',
    'circuit.legs',
  );
  return leg;
}

/** W asked of the generator while it charges and the unit heats. */
function askedOf(electrics: Electrics, power: Power, recorder: WorkingRecorder): Range {
  const unit = taken('P_unit', electrics.powerMost, recorder);
  const other = taken('P_other', power.otherLoad, recorder);
  const charge = taken('P_charge', power.generator.charging, recorder);
  const asked = eachEnd((end) => unit[end] + other[end] + charge[end]);
  recorder.step(
    'P',
    'P_unit + P_other + P_charge',
    { P_unit: unit.likely, P_other: other.likely, P_charge: charge.likely },
    asked.likely,
    'W',
    'circuit.generator',
  );
  return asked;
}
