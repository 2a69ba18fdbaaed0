import { inIdOrder, type ResolvedProject } from '@kneewall/project';
import type { System } from '../../physics/building/index.ts';
import type { Envelope } from '../../physics/infiltration/index.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { envelopeOf, leakShares } from '../house.ts';
import { ownLossOf } from '../learned/ownLoss.ts';
import { scaledLeaks } from '../learned/scaled.ts';
import { learnedTimes } from '../learned/times.ts';
import type { YearWave } from './ground.ts';
import type { Shell } from './shell.ts';
import { shellOfAnswers } from './shellOfAnswers.ts';
import { shellOfRooms } from './shellOfRooms.ts';

type House = ResolvedProject['house'];
type Site = ResolvedProject['site'];

/** Temperatures wanted, °C, relative humidity in summer, and how far the night may fall, K, between two hours. */
export type Wanted = {
  readonly heating: number;
  readonly cooling: number;
  readonly humidity: number;
  readonly setback: number;
  readonly nightFrom: number;
  readonly nightTo: number;
  /** The room with the thermostat, where one is named. */
  readonly thermostat?: string;
};

/** Everything the heat balance of a house needs beside weather: plain numbers, so that equal houses make equal jobs. */
export type HouseInputs = {
  readonly shell: Shell;
  readonly envelope: Envelope;
  /** Share of the leakage by room. */
  readonly leaks: Readonly<Record<string, number>>;
  readonly people: number;
  readonly appliances: number;
  readonly wanted: Wanted;
  readonly pressure: number;
  readonly groundReflectance: number;
  readonly wave: YearWave;
  /** Degrees above the level that the surroundings hide, by compass direction. */
  readonly horizon: readonly { readonly azimuth: number; readonly height: number }[];
  /** How many times as much heat everything round the rooms lets through, by a log; the leaks are scaled already. 1 where it is absent. */
  readonly times?: number;
};

/** Reads a house in one scenario. Pressure in Pa, monthly means in °C as a wave. */
export function houseInputs(house: House, site: Site, pressure: number, wave: YearWave, s: Scenario): HouseInputs {
  const byRoom = Object.keys(house.rooms).length > 0 && Object.keys(house.surfaces).length > 0;
  const shell = byRoom ? shellOfRooms(house, s) : shellOfAnswers(house, s);
  const volumes = Object.fromEntries(shell.rooms.map((r) => [r.id, r.floorArea * r.height]));
  const outside = Object.fromEntries(shell.rooms.map((r) => [r.id, outsideOf(shell, r.id)]));
  const volume = Object.values(volumes).reduce((a, b) => a + b, 0);
  const { setpoints, people } = house;
  const times = learnedTimes(house, s, (x) => ownLossOf(house, site, { pressure, ground: wave.mean }, x));
  return {
    shell,
    ...(times === 1 ? {} : { times }),
    envelope: scaledLeaks(envelopeOf(house, site, volume, s), times),
    leaks: leakShares(outside, volumes),
    people: s.of(people.count),
    appliances: s.of(people.appliances),
    wanted: {
      heating: s.of(setpoints.heating),
      cooling: s.of(setpoints.cooling),
      humidity: s.of(setpoints.humidity),
      setback: s.of(setpoints.nightSetback),
      nightFrom: s.of(setpoints.nightFrom),
      nightTo: s.of(setpoints.nightTo),
      ...(setpoints.thermostat === undefined ? {} : { thermostat: setpoints.thermostat }),
    },
    pressure,
    groundReflectance: s.of(site.groundReflectance),
    wave,
    horizon: inIdOrder(site.horizon).map(([, h]) => ({
      azimuth: (s.of(h.azimuth) + 360) % 360,
      height: s.of(h.height),
    })),
  };
}

/** m² of outside walls and windows of a room. */
const outsideOf = (shell: Shell, room: string): number =>
  shell.surfaces
    .filter((x) => x.room === room && x.behind === 'outdoors')
    .reduce((a, x) => a + x.area + x.windows.reduce((b, w) => b + w.width * w.height, 0), 0);

type Hours = System['heatTo'];
const everyHour = (t: number | null): Hours =>
  Array.from({ length: 24 }, () => (t === null ? null : ([t, t] as const)));

/** The heating set point through a day: lower at night by the setback, back up in a line over the hour after. */
export function heatingHours({ heating, setback, nightFrom, nightTo }: Wanted): Hours {
  if (setback === 0) return everyHour(heating);
  const night = (h: number): boolean => (h - nightFrom + 24) % 24 < (nightTo - nightFrom + 24) % 24;
  return Array.from({ length: 24 }, (_, h) => {
    if (night(h)) return [heating - setback, heating - setback] as const;
    return night((h + 23) % 24) ? ([heating - setback, heating] as const) : ([heating, heating] as const);
  });
}

/** As much heat or cold as each room takes, room by room: what loads are. */
export function roomSystems(shell: Shell, heatTo: Hours | undefined, coolTo: number | undefined): System[] {
  return shell.rooms.map((r) => ({
    id: r.id,
    sensor: r.id,
    shares: { [r.id]: 1 },
    heatTo: heatTo ?? everyHour(null),
    coolTo: everyHour(coolTo ?? null),
  }));
}
