import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { startZones } from '../../loads/dynamic/designDays.ts';
import { type KeptWalls, type System, startState } from '../../physics/building/index.ts';
import { powerSlots, startPower } from '../../physics/power/index.ts';
import { type KeptSun, keptColumn } from '../../physics/sun/index.ts';
import { thermostatRoom } from '../ducted/ductworks.ts';
import { houseWeather, type YearWeatherSteps } from '../houseYear/run.ts';
import type { UnitRows } from '../season/unitPower.ts';
import { unitLayout, unitRows } from '../season/unitYear.ts';
import { householdDay } from './householdDay.ts';
import { type Outages, outagesFrom } from './outages.ts';
import { noFireYet, type PowerLoop } from './powerLoop.kernel.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRuns, PowerWay, RunWith } from './runWay.ts';
import { sharedRuns } from './sharedRuns.ts';
import { sunAtBus } from './sunAtBus.ts';
import { systemOf } from './systemOf.ts';

/** Days of the year's end that settle walls and battery before the year counts. */
export const settling = 30;

/** What runs are made of: how many steps they have, what the unit can do, °C wanted by step of the day. */
export type ReadyRuns = {
  readonly steps: number;
  readonly able: UnitRows;
  readonly wanted: Float64Array;
  /** W that the sun could give at the bus, by step. */
  readonly sun: Float64Array;
  readonly run: PowerRuns;
} & Outages;

/** What of a year is run: so many days from one of its days, 0 to 364, on, round the year's end. */
export type Span = { readonly firstDay: number; readonly days: number };

/** What all weather of a place has in common: where its sun stands, and its house's walls worked out. */
export type Kept = { readonly sun: KeptSun; readonly walls: KeptWalls };
export const nothingKept = (): Kept => ({ sun: new Map(), walls: new Map() });

/** Weather laid out in steps, what the unit can do in each of its rows, and what arrays give in it, by what they are. */
export type Prepared = {
  readonly weather: YearWeatherSteps;
  readonly able: UnitRows;
  readonly kept: Kept;
  readonly suns: Map<string, Float64Array>;
};

/** House, unit and step are all that weather is prepared for. */
type Stands = Pick<RunInputs, 'house' | 'unit' | 'step'>;

export function prepare({ house, unit, step }: Stands, year: WeatherYear, kept = nothingKept()): Prepared {
  const weather = houseWeather(year, Math.min(step, year.stepSeconds), house.horizon, kept.sun);
  return { weather, able: unitRows(unit, house.pressure, weather), kept, suns: new Map() };
}

/** The same weather with another unit. */
export const preparedFor = ({ house, unit }: Stands, was: Prepared): Prepared => ({
  ...was,
  able: unitRows(unit, house.pressure, was.weather),
});

/** W at the bus by step; arrays of the same kind in the same place are worked out once. */
function sunOf({ house, power: { arrays } }: RunInputs, { weather, suns }: Prepared): Float64Array {
  return keptColumn(suns, JSON.stringify([arrays, house.groundReflectance]), () =>
    sunAtBus(arrays, weather, house.groundReflectance),
  );
}

type RunInputs = Omit<PowerYearInputs, 'weather'>;

/** House, unit, ducts and power made ready for their year, or a span of it; what was prepared for equal weather and unit may be lent. `tell` hears steps. */
export function powerRuns(
  inputs: RunInputs,
  year: WeatherYear,
  { span, prepared = prepare(inputs, year) }: { readonly span?: Span; readonly prepared?: Prepared } = {},
): ReadyRuns {
  const { weather, able, kept } = prepared;
  const { house, unit, ducts, power } = inputs;
  const stove = power.stove ? [stoveOf(house, weather.monthOfRow.length)] : [];
  const layout = unitLayout(house, weather, unit, ducts, able, { others: stove, kept: kept.walls });
  const sun = sunOf(inputs, prepared);
  const { steps } = weather;
  const inside = power.battery.place === 'heated';
  const perDay = Math.round(86_400 / steps.stepSeconds);
  const from = (span?.firstDay ?? 0) * perDay;
  const days = span?.days ?? steps.count / perDay;
  const outside = steps.outdoor[from] ?? 0;
  const wanted = layout.control.heatTo.slice(0, perDay);
  const fresh = (way: PowerWay, { raised, rule }: RunWith = {}): PowerLoop => {
    const system = systemOf(power, way !== 'without-generator');
    return {
      layout,
      state: startState(layout, {
        inside: house.wanted.heating,
        zones: startZones(house.wanted.heating, outside),
        outside,
        humidity: 0.006,
      }),
      weather: steps,
      able,
      strips: unit.strips,
      standing: inputs.standing,
      system,
      power: startPower(system, 0.6, inside ? house.wanted.heating : outside),
      flows: new Float64Array(powerSlots.flowCount),
      sun,
      household: householdDay(power.household, perDay),
      before: power.household.shedFirst === 'heat' ? 1 : power.household.essential,
      stove: power.stove?.heat ?? 0,
      lightBelow: power.stove?.lightBelow ?? 0,
      burns: Uint32Array.of(0, noFireYet),
      limited: way !== 'unlimited',
      parted: new Uint8Array(1),
      inside,
      wanted,
      raised: raised ?? new Float64Array(steps.count),
      rule,
    };
  };
  const run = sharedRuns(fresh, { from, days, perDay, settling }, (record) => ({
    record,
    weather,
    sun,
    hours: steps.stepSeconds / 3600,
  }));
  const warmth = (at: number): number => (inside ? house.wanted.heating : (steps.outdoor[at % steps.count] ?? outside));
  return { steps: days * perDay, able, wanted, sun, run, ...outagesFrom({ fresh, steps, perDay, settling, warmth }) };
}

/** A stove in the room with the thermostat, aimed and cold until it is lit: each step says where to. */
const stoveOf = (house: PowerYearInputs['house'], rows: number): System => {
  const room = thermostatRoom(house);
  return {
    id: 'stove',
    sensor: room,
    shares: { [room]: 1 },
    heatTo: Array.from({ length: 24 }, () => [0, 0] as const),
    coolTo: Array.from({ length: 24 }, () => null),
    heatMost: new Float64Array(rows),
  };
};
