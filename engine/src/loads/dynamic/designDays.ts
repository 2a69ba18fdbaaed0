import {
  type Ductwork,
  type KeptWalls,
  type RowRecord,
  runBuilding,
  settleDay,
  startState,
  weatherSteps,
} from '../../physics/building/index.ts';
import { type DayWeather, rowsOfDay } from './designWeather.ts';
import { type HouseInputs, heatingHours, roomSystems, type Wanted } from './houseInputs.ts';
import { layOutHouse } from './layOutHouse.ts';

/** W at the worst hour, by room and for the house; heating of a night, hour by hour. */
export type NightLoad = {
  readonly house: number;
  readonly rooms: Readonly<Record<string, number>>;
  readonly hours: readonly number[];
  /** °C in the attic at the coldest hour, where there is one. */
  readonly attic?: number;
};

/** The hot day hour by hour, W; rooms at the house's worst hour and at their own. */
export type DayLoad = {
  readonly sensible: readonly number[];
  readonly latent: readonly number[];
  /** 0 to 23, the hour in which the house takes most sensible heat. */
  readonly worst: number;
  readonly rooms: Readonly<Record<string, { readonly atWorst: number; readonly most: number; readonly hour: number }>>;
  readonly attic?: readonly number[];
};

/** Steps in s, days that a repeated day is run before it counts, walls worked out before. */
export type DayRun = {
  readonly step: number;
  readonly settling: number;
  readonly kept: KeptWalls;
  /** What carries the rooms' heat, where it comes through ducts. */
  readonly ductworks?: readonly Ductwork[];
};

/** Quarters of an hour, and fourteen days: walls and the soil under them have forgotten where they began. */
export const carefully = (): DayRun => ({ step: 900, settling: 14, kept: new Map() });
/** Hours, and eight days: enough to tell houses apart. */
export const quickly = (): DayRun => ({ step: 3600, settling: 8, kept: new Map() });

/** Where the spaces round the rooms begin: the attic with the air, those below and beside half way. */
export const startZones = (inside: number, outside: number) => ({
  attic: outside,
  below: (inside + outside) / 2,
  unheated: (inside + outside) / 2,
});

type Run = { readonly record: RowRecord; readonly zones: readonly string[]; readonly rooms: readonly string[] };

/** Runs a house through one repeated day until it has settled. */
function settledDay(
  inputs: HouseInputs,
  day: DayWeather,
  systems: ReturnType<typeof roomSystems>,
  occupied: number,
  { step, settling, ...run }: DayRun,
): Run {
  const steps = weatherSteps(rowsOfDay(day, inputs.horizon), step);
  const monthOfRow = new Float64Array(24).fill(day.month);
  const layout = layOutHouse(inputs, { steps, monthOfRow }, systems, { ...run, occupied });
  const mean = day.outdoor.reduce((a, t) => a + t, 0) / 24;
  const heated = systems.some((s) => s.heatTo.some((h) => h !== null));
  const inside = heated ? inputs.wanted.heating : Math.min(mean, inputs.wanted.cooling);
  const begun = startState(layout, {
    inside,
    zones: startZones(inside, mean),
    outside: mean,
    humidity: day.humidityRatio,
  });
  settleDay(layout, begun, steps, settling);
  const record = runBuilding(layout, begun, steps, { warmUp: 0 });
  return { record, zones: layout.zoneIds, rooms: inputs.shell.rooms.map((r) => r.id) };
}

const hoursOf = (x: Float64Array, of: number, k: number): number[] =>
  Array.from({ length: 24 }, (_, h) => x[h * of + k] ?? 0);

/** Heating at the cold night: nobody at home, no sun; `wanted` may lower the night. */
export function nightLoad(inputs: HouseInputs, night: DayWeather, wanted: Wanted, run = carefully()): NightLoad {
  const { record, zones, rooms } = settledDay(
    inputs,
    night,
    roomSystems(inputs.shell, heatingHours(wanted), undefined),
    0,
    run,
  );
  const byRoom = rooms.map((_, k) => hoursOf(record.heating, rooms.length, k));
  const hours = Array.from({ length: 24 }, (_, h) => byRoom.reduce((a, room) => a + (room[h] ?? 0), 0));
  const attic = zones.indexOf('attic');
  return {
    house: Math.max(...hours),
    rooms: Object.fromEntries(rooms.map((id, k) => [id, Math.max(...(byRoom[k] ?? [0]))])),
    hours,
    ...(attic < 0 ? {} : { attic: Math.min(...hoursOf(record.temperature, zones.length, attic)) }),
  };
}

/** Cooling on the hot day, at home. */
export function dayLoad(inputs: HouseInputs, day: DayWeather, run = carefully()): DayLoad {
  const systems = roomSystems(inputs.shell, undefined, inputs.wanted.cooling);
  const { record, zones, rooms } = settledDay(inputs, day, systems, 1, run);
  const byRoom = rooms.map((_, k) => hoursOf(record.cooling, rooms.length, k));
  const wet = zones.map((_, k) => hoursOf(record.latent, zones.length, k));
  const sum = (rows: readonly (readonly number[])[]): number[] =>
    Array.from({ length: 24 }, (_, h) => rows.reduce((a, row) => a + (row[h] ?? 0), 0));
  const sensible = sum(byRoom);
  const worst = sensible.indexOf(Math.max(...sensible));
  const attic = zones.indexOf('attic');
  return {
    sensible,
    latent: sum(wet),
    worst,
    rooms: Object.fromEntries(
      rooms.map((id, k) => {
        const mine = byRoom[k] ?? [];
        const most = Math.max(...mine);
        return [id, { atWorst: mine[worst] ?? 0, most, hour: mine.indexOf(most) }];
      }),
    ),
    ...(attic < 0 ? {} : { attic: hoursOf(record.temperature, zones.length, attic) }),
  };
}
