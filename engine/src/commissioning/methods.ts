import type { Group } from '../coupling/asBuilt/system.ts';
import type { Means } from './visit.ts';

/**
 * What a way of reading is worth: a part that repeating does not cure and one that it does. Shares of the reading, or K
 * for temperatures. Sources: `commissioning.methods` and, for bags, `commissioning.bag`.
 */
export type Method = {
  readonly fixed: number;
  readonly random: number;
  /** Below what it cannot be told from nothing, in the unit of what is read. */
  readonly floor: number;
  /** Minutes for one reading, the way to it counted. */
  readonly minutes: number;
  /** Made of what is at hand: it convicts, and only from three readings on. */
  readonly improvised?: true;
};

export const methods: Readonly<Record<Means, Method>> = {
  gauge: { fixed: 0.03, random: 0.05, floor: 1, minutes: 4 },
  bag: { fixed: 0.1, random: 0.2, floor: 0.002, minutes: 2, improvised: true },
  vane: { fixed: 0.15, random: 0.12, floor: 0.002, minutes: 2, improvised: true },
  hood: { fixed: 0.15, random: 0.08, floor: 0.002, minutes: 2, improvised: true },
  thermometer: { fixed: 0.5, random: 0.3, floor: 0, minutes: 5 },
  meter: { fixed: 0.02, random: 0.02, floor: 5, minutes: 3 },
  clamp: { fixed: 0.06, random: 0.03, floor: 15, minutes: 5 },
  house: { fixed: 0.03, random: 0.05, floor: 60, minutes: 4 },
  cup: { fixed: 0.03, random: 0.08, floor: 5e-6, minutes: 12 },
  watch: { fixed: 0.02, random: 0.1, floor: 0, minutes: 15 },
};

/** Pa within which a gauge reads a room: zero drifts less than gusts move it. Common practice, no source: `commissioning.methods`. */
const gustiness = 0.5;

/** Below what a method cannot tell a kind of number from nothing, in its unit. */
export const floorOf = (group: Group, means: Means): number =>
  group === 'room-pressure' ? gustiness : methods[means].floor;

/** What a kind of number is usually read with at home. */
export const usualMeans: Readonly<Record<Group, Means>> = {
  pressure: 'gauge',
  'room-pressure': 'gauge',
  flow: 'bag',
  temperature: 'thermometer',
  power: 'meter',
  water: 'cup',
  time: 'watch',
};

/** Standard deviation of a value read n times, in its own unit. */
export function errorOf(group: Group, means: Means, value: number, repeats: number): number {
  const { fixed, random } = methods[means];
  const share = Math.sqrt(fixed ** 2 + random ** 2 / repeats);
  return group === 'temperature' ? share : Math.hypot(share * Math.abs(value), floorOf(group, means));
}

/** What a run, a filter or a coil differs by from the plan's even where nothing is wrong: a share, or K. Source: `commissioning.doubts`. */
export const ownScatter: Readonly<Record<Group, number>> = {
  pressure: 0.04,
  'room-pressure': 0.15,
  flow: 0.07,
  temperature: 0.6,
  power: 0.03,
  water: 0.12,
  time: 0.1,
};

/** Within which a number is good: shares of what is expected, or K. Common practice, no source: `commissioning.bands`. */
const bands: Readonly<Record<Group, number>> = {
  pressure: 0.2,
  'room-pressure': 0.5,
  flow: 0.2,
  temperature: 2,
  power: 0.15,
  water: 0.35,
  time: 0.3,
};

/** Pa either side of what a room behind its door should have, however little that is. Common practice: `commissioning.bands`. */
const roomLeast = 1.5;

/** The band in which a true value is good. */
export function bandOf(group: Group, expected: number): { readonly min: number; readonly max: number } {
  const half =
    group === 'temperature'
      ? bands.temperature
      : Math.max(group === 'room-pressure' ? roomLeast : 0, bands[group] * Math.abs(expected));
  return { min: expected - half, max: expected + half };
}
