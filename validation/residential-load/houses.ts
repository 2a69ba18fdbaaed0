import { evaluate, type Job, runJob } from '@kneewall/engine';
import { checkProject } from '@kneewall/project';
import { checker } from '../src/checker.ts';
import type { Row } from '../src/row.ts';
import cottage from './houses/cottage.json' with { type: 'json' };
import ranch from './houses/ranch.json' with { type: 'json' };

const check = checker('residential-load');

/** W by room: steady sums of night and hot hour, the network of one constant night, and of the hot day in the house's worst hour. */
type Rooms = Readonly<Record<string, readonly [night: number, hot: number, network: number, day: number]>>;
type Case = {
  readonly name: string;
  readonly house: unknown;
  readonly rooms: Rooms;
  /** W of latent heat in the hot hour, the hour of the day, °C of the attic: its night by sum and network, its hottest hour by network. */
  readonly latent: number;
  readonly hour: number;
  readonly attic: readonly [sum: number, network: number, hottest: number];
  /** W of the house in its worst hour of the hot day, by the network. */
  readonly day: number;
};

const cases: readonly Case[] = [
  {
    name: 'cottage',
    house: cottage,
    rooms: {
      sitting: [3118, 2160, 2692.9, 1384],
      'bed-south': [1333, 639, 1148.5, 309],
      'bed-north': [1240, 233, 1065.2, 129],
      bath: [441, 97, 381.5, 51],
      hall: [432, 61, 607.5, 159],
      work: [2146, 980, 1947.2, 870],
    },
    latent: 269.8,
    hour: 14.5,
    attic: [-13.63, -12.05, 34.2],
    day: 2901,
  },
  {
    name: 'ranch',
    house: ranch,
    rooms: {
      living: [1757, 2731, 1778.5, 1753],
      kitchen: [908, 415, 907.9, 492],
      'bed-1': [940, 438, 918.4, 541],
      'bed-2': [771, 878, 753.6, 595],
      bath: [261, 112, 289.1, 173],
    },
    latent: 353.5,
    hour: 15.5,
    attic: [-13.35, -12.07, 59.3],
    day: 3556,
  },
];

/** What is read of the two design days. */
type Days = {
  readonly night: { readonly rooms: Readonly<Record<string, number>>; readonly attic?: number };
  readonly day: {
    readonly sensible: readonly number[];
    readonly rooms: Readonly<Record<string, { readonly atWorst: number }>>;
    readonly attic?: readonly number[];
  };
};

function days(wanted: readonly Job[]): Days {
  const job = wanted.find((j) => j.kind === 'loads/days');
  if (!job) throw new Error('assert: a house of rooms asks for its design days');
  return runJob(job, { blob: () => undefined, tell: () => {} }) as Days;
}

/** Two houses room by room against independent code: steady sums, and a night that never changes. */
export const houses = (): Row[] => cases.flatMap(rowsOf);

function rowsOf({ name, house, rooms, latent, hour, attic, ...whole }: Case): Row[] {
  const opened = checkProject(house);
  if (!opened.ok) throw new Error('assert: the house is a valid project');
  const { plan, wanted } = evaluate(opened.project, {});
  const { loads } = plan.trades;
  const { night, day } = days(wanted);
  const of = (parts: readonly { readonly heat: number }[] | undefined) => parts?.reduce((a, p) => a + p.heat, 0);
  const cooling = loads?.cooling.ok ? loads.cooling.value : undefined;
  return [
    ...Object.entries(rooms).flatMap(([room, [cold, hot, network, worst]]) => [
      check(name, `${room}, night, sum`, 'W', cold, 0.7, of(loads?.rooms[room]?.heatingParts)),
      // The sun's declination by another series: half a degree in August.
      check(name, `${room}, hot hour, sum`, 'W', hot, 0.5 + 0.008 * hot, of(loads?.rooms[room]?.coolingParts)),
      check(name, `${room}, night, network`, 'W', network, 0.002 * network, night.rooms[room]),
      // Eaves shade the sky in the plane there, in space here.
      check(name, `${room}, hot day, network`, 'W', worst, 9 + 0.02 * worst, day.rooms[room]?.atWorst),
    ]),
    check(name, 'latent, hot hour', 'W', latent, 1.5, cooling?.latent.likely),
    check(name, 'hot hour', 'h', hour, 1e-9, cooling?.hour),
    check(
      name,
      'attic, night, sum',
      '°C',
      attic[0],
      0.01,
      loads?.atticNight.ok ? loads.atticNight.value.likely : undefined,
    ),
    check(name, 'attic, night, network', '°C', attic[1], 0.01, night.attic),
    check(name, 'house, hot day, network', 'W', whole.day, 0.012 * whole.day, Math.max(...day.sensible)),
    check(name, 'attic, hot day, network', '°C', attic[2], 0.4, Math.max(...(day.attic ?? []))),
  ];
}
