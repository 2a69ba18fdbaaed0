import { evaluate, type Job, runJob } from '@kneewall/engine';
import { checkProject } from '@kneewall/project';
import { checker } from '../src/checker.ts';
import type { Row } from '../src/row.ts';
import cottage from './houses/cottage.json' with { type: 'json' };
import ranch from './houses/ranch.json' with { type: 'json' };

const check = checker('residential-load');

/** W by room: the night's steady sum, the hot hour's sensible sum, and the network of one constant night. */
type Rooms = Readonly<Record<string, readonly [night: number, hot: number, network: number]>>;
type Case = {
  readonly name: string;
  readonly house: unknown;
  readonly rooms: Rooms;
  /** W of latent heat in the hot hour, the hour of the day, °C of the attic by sum and by network. */
  readonly latent: number;
  readonly hour: number;
  readonly attic: readonly [sum: number, network: number];
};

const cases: readonly Case[] = [
  {
    name: 'cottage',
    house: cottage,
    rooms: {
      sitting: [3118, 2160, 2692.9],
      'bed-south': [1333, 639, 1148.5],
      'bed-north': [1240, 233, 1065.2],
      bath: [441, 97, 381.5],
      hall: [432, 61, 607.5],
      work: [2146, 980, 1947.2],
    },
    latent: 269.8,
    hour: 14.5,
    attic: [-13.63, -12.05],
  },
  {
    name: 'ranch',
    house: ranch,
    rooms: {
      living: [1757, 2731, 1778.5],
      kitchen: [908, 415, 907.9],
      'bed-1': [940, 438, 918.4],
      'bed-2': [771, 878, 753.6],
      bath: [261, 112, 289.1],
    },
    latent: 353.5,
    hour: 15.5,
    attic: [-13.35, -12.07],
  },
];

/** What is read of the two design days. */
type Days = { readonly night: { readonly rooms: Readonly<Record<string, number>>; readonly attic?: number } };

function days(wanted: readonly Job[]): Days {
  const job = wanted.find((j) => j.kind === 'loads/days');
  if (!job) throw new Error('assert: a house of rooms asks for its design days');
  return runJob(job, { blob: () => undefined, tell: () => {} }) as Days;
}

/** Two houses room by room against independent code: steady sums, and a night that never changes. */
export const houses = (): Row[] => cases.flatMap(rowsOf);

function rowsOf({ name, house, rooms, latent, hour, attic }: Case): Row[] {
  const opened = checkProject(house);
  if (!opened.ok) throw new Error('assert: the house is a valid project');
  const { plan, wanted } = evaluate(opened.project, {});
  const { loads } = plan.trades;
  const { night } = days(wanted);
  const of = (parts: readonly { readonly heat: number }[] | undefined) => parts?.reduce((a, p) => a + p.heat, 0);
  const cooling = loads?.cooling.ok ? loads.cooling.value : undefined;
  return [
    ...Object.entries(rooms).flatMap(([room, [cold, hot, network]]) => [
      check(name, `${room}, night, sum`, 'W', cold, 0.7, of(loads?.rooms[room]?.heatingParts)),
      // The sun's declination by another series: half a degree in August.
      check(name, `${room}, hot hour, sum`, 'W', hot, 0.5 + 0.008 * hot, of(loads?.rooms[room]?.coolingParts)),
      check(name, `${room}, night, network`, 'W', network, 0.002 * network, night.rooms[room]),
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
  ];
}
