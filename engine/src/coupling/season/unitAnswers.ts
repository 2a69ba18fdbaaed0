import { heatingHours } from '../../loads/dynamic/houseInputs.ts';
import { pressureOfRatio, saturationPressure } from '../../physics/air/index.ts';
import { daysInMonth, monthOfDay } from '../../physics/calendar.ts';
import { thermostatRoom } from '../ducted/ductworks.ts';
import type { YearRun } from '../houseYear/run.ts';
import { powerFor, type UnitRows } from './unitPower.ts';
import type { UnitYearInputs } from './unitYearJob.ts';

/** Hours of a month by how the unit runs. `flatOut`: at all it has, strips included. */
export type RunHours = {
  readonly stopStart: number;
  readonly holding: number;
  readonly helped: number;
  readonly flatOut: number;
};

/** What a year with this unit and these ducts comes to. Energy kWh, temperatures °C. */
export type UnitYear = {
  /** The room with the thermostat. */
  readonly thermostat: string;
  /** Whether the sheet shows a lowest speed: else nobody can tell stopping from holding. */
  readonly lowestKnown: boolean;
  readonly winter: readonly RunHours[];
  readonly summer: readonly RunHours[];
  readonly heating: { readonly heat: number; readonly compressor: number; readonly strips: number };
  readonly cooling: { readonly sensible: number; readonly latent: number; readonly compressor: number };
  /** What the same year takes with ducts that neither leak nor lose. */
  readonly perfectDucts: { readonly heat: number; readonly sensible: number };
  /** Hours more than 1 K off what is wanted, by room: too cold while heat is wanted, too warm while cold is; and the worst. */
  readonly rooms: Readonly<
    Record<string, { readonly cold: number; readonly hot: number; readonly lowest: number; readonly highest: number }>
  >;
  /** °C in the attic at its hottest, with these ducts and with perfect ones; only where there is an attic. */
  readonly attic?: { readonly most: number; readonly withPerfect: number };
  /** Hours of cooling in which the rooms are damper than 60 %. */
  readonly dampHours: number;
  /** Hours colder than the unit's sheet. */
  readonly beyond: number;
};

const comfort = 1;
const damp = 0.6;
/** Share of its most above which a unit has nothing left. */
const nearly = 0.999;

/** Reads a year with a unit off its rows. */
export function unitAnswers(inputs: UnitYearInputs, able: UnitRows, run: YearRun, withPerfect: YearRun): UnitYear {
  const hours = run.rowSeconds / 3600;
  const energy = (x: Float64Array): number => (x.reduce((a, b) => a + b, 0) * hours) / 1000;
  const latent = latentRows(run);
  return {
    thermostat: thermostatRoom(inputs.house),
    lowestKnown: inputs.unit.model.rows.some((r) => r.mode === 'heating' && r.speed === 'least'),
    winter: runHours(run, run.record.heating, able.heating, inputs.unit.strips),
    summer: runHours(
      run,
      run.record.cooling.map((x, i) => (x > 0 ? x + (latent[i] ?? 0) : 0)),
      able.cooling,
      0,
    ),
    heating: heatingEnergy(inputs, able, run),
    cooling: {
      sensible: energy(run.record.cooling),
      latent: energy(latent),
      compressor: energy(
        run.record.cooling.map((x, i) => powerFor(able.cooling[i] ?? [], x > 0 ? x + (latent[i] ?? 0) : 0)),
      ),
    },
    perfectDucts: { heat: energy(withPerfect.record.heating), sensible: energy(withPerfect.record.cooling) },
    rooms: roomHours(inputs, run),
    ...atticMost(run, withPerfect),
    dampHours: dampHours(inputs, run),
    beyond: able.beyond.reduce((a, x) => a + x, 0) * hours,
  };
}

/** W of vapour taken out in each row, all zones. */
function latentRows({ record, rows, zones }: YearRun): Float64Array {
  const n = zones.length;
  return Float64Array.from({ length: rows }, (_, row) => {
    let sum = 0;
    for (let z = 0; z < n; z++) sum += record.latent[row * n + z] ?? 0;
    return sum;
  });
}

/** kWh of heat, and of electricity for it, of a run. */
export function heatingEnergy({ unit }: UnitYearInputs, able: UnitRows, run: YearRun): UnitYear['heating'] {
  let [heat, compressor, strips] = [0, 0, 0];
  run.record.heating.forEach((q, row) => {
    const moment = able.heating[row] ?? [];
    const byUnit = Math.min(q, moment.at(-1)?.capacity ?? 0);
    heat += q;
    compressor += powerFor(moment, byUnit);
    strips += Math.min(q - byUnit, unit.strips);
  });
  const kilowattHours = run.rowSeconds / 3.6e6;
  return { heat: heat * kilowattHours, compressor: compressor * kilowattHours, strips: strips * kilowattHours };
}

const monthOf = (row: number, run: YearRun): number => monthOfDay(Math.floor((row * run.rowSeconds) / 86_400));

function runHours(run: YearRun, given: Float64Array, able: UnitRows['heating'], strips: number): RunHours[] {
  const months = daysInMonth.map(() => ({ stopStart: 0, holding: 0, helped: 0, flatOut: 0 }));
  given.forEach((q, row) => {
    const month = months[monthOf(row, run)];
    const moment = able[row] ?? [];
    const most = moment.at(-1)?.capacity ?? 0;
    if (!month || q <= 0) return;
    const how =
      q >= nearly * (most + strips)
        ? 'flatOut'
        : q > most
          ? 'helped'
          : moment.length > 1 && q < (moment[0]?.capacity ?? 0)
            ? 'stopStart'
            : 'holding';
    month[how] += run.rowSeconds / 3600;
  });
  return months;
}

/** How far each room strays from what is wanted while the unit runs. */
export function roomHours({ house }: UnitYearInputs, run: YearRun): UnitYear['rooms'] {
  const { record, rooms, zones, rows } = run;
  const hours = run.rowSeconds / 3600;
  const aims = heatingHours(house.wanted);
  return Object.fromEntries(
    rooms.map((id) => {
      const at = zones.indexOf(id);
      let [cold, hot, lowest, highest] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (let row = 0; row < rows; row++) {
        const t = record.temperature[row * zones.length + at] ?? 0;
        const aim = aims[Math.floor(row * hours) % 24]?.[0] ?? house.wanted.heating;
        if ((record.heating[row] ?? 0) > 0 && t < aim - comfort) cold += hours;
        if ((record.cooling[row] ?? 0) > 0 && t > house.wanted.cooling + comfort) hot += hours;
        lowest = Math.min(lowest, t);
        highest = Math.max(highest, t);
      }
      return [id, { cold, hot, lowest, highest }];
    }),
  );
}

function atticMost(run: YearRun, withPerfect: YearRun): Pick<UnitYear, 'attic'> {
  const at = run.zones.indexOf('attic');
  if (at < 0) return {};
  const mostOf = ({ record, rows, zones }: YearRun): number => {
    let most = Number.NEGATIVE_INFINITY;
    for (let row = 0; row < rows; row++) most = Math.max(most, record.temperature[row * zones.length + at] ?? 0);
    return most;
  };
  return { attic: { most: mostOf(run), withPerfect: mostOf(withPerfect) } };
}

/** Hours of cooling in which the room with the thermostat is damp. */
function dampHours({ house }: UnitYearInputs, run: YearRun): number {
  const at = run.zones.indexOf(thermostatRoom(house));
  let rows = 0;
  for (let row = 0; row < run.rows; row++) {
    if ((run.record.cooling[row] ?? 0) <= 0) continue;
    const i = row * run.zones.length + at;
    const vapour = pressureOfRatio(run.record.humidity[i] ?? 0, house.pressure);
    if (vapour > damp * saturationPressure(run.record.temperature[i] ?? 0)) rows++;
  }
  return (rows * run.rowSeconds) / 3600;
}
