import { electric } from '../plan/cautions.ts';
import type { Conditions, ExpectedReading } from '../plan/lines.ts';
import type { CircuitResult, Run } from './result.ts';

/** Ω. Source: `circuit.insulation`. */
const insulation = { least: 1e6, newCable: 1e8, shown: 1e10 };
/** V that a good pocket meter may be off, twice: it reads two voltages. */
const meter = 1;

/** Insulation before power, then what the wires lose while the unit runs and starts. */
export function readings({ runs, voltage }: CircuitResult, _conditions: Conditions): readonly ExpectedReading[] {
  return runs.flatMap((run) => [insulationOf(run), ...running(run), ...starting(run, voltage)]);
}

const at: Readonly<Record<Run['id'], string>> = { outdoor: 'the outdoor unit', handler: 'the air handler' };

const insulationOf = (run: Run): ExpectedReading => ({
  id: `circuit/insulation:${run.id}`,
  trade: 'circuit',
  what: `Insulation of the wires to ${at[run.id]}, before any power`,
  how: 'By a licensed person: tester at 500 V, each conductor to each other and to ground, wires off at both ends. New cable in a dry place reads far above the least.',
  kind: 'resistance',
  expected: insulation.newCable,
  good: { min: insulation.least, max: insulation.shown },
  caution:
    'The tester destroys electronics: never with a unit, an inverter or a surge protector connected. Discharge the wires after.',
});

function running(run: Run): ExpectedReading[] {
  if (!run.drop.ok) return [];
  const { likely, high } = run.drop.value.volts;
  return [
    {
      id: `circuit/drop:${run.id}`,
      trade: 'circuit',
      what: `Voltage at the panel less voltage at the disconnect of ${at[run.id]}, unit at full speed`,
      how: 'Two readings within a minute, same meter, unit ten minutes at full speed. At less than full current it is less in proportion. Far more than expected means a loose or burnt joint: off, and call the electrician.',
      kind: 'voltage-difference',
      expected: likely,
      good: { min: 0, max: high * 1.2 + meter },
      caution: electric,
    },
  ];
}

function starting(run: Run, voltage: number): ExpectedReading[] {
  if (!run.starting?.ok) return [];
  const { likely } = run.starting.value;
  return [
    {
      id: `circuit/starting:${run.id}`,
      trade: 'circuit',
      what: `Lowest voltage at the disconnect of ${at[run.id]} while the compressor starts`,
      how: 'Meter with a minimum hold, fast enough for a tenth of a second. What panel, inverter and feeder lose comes on top of what is expected of the wires.',
      kind: 'voltage',
      expected: likely * voltage,
      good: { min: 0.8 * voltage, max: voltage },
      caution: electric,
    },
  ];
}
