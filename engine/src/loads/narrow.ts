import type { Range } from '@kneewall/project';
import type { Driver, Spread } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { jointRange } from './jointRange.ts';
import type { Narrowed } from './result.ts';

/** Below this the two witnesses contradict each other. Source: `loads.joint`. */
const overlapLeast = 0.05;
/** A range that keeps more than this share of its width has learnt nothing worth saying. */
const widthMost = 0.95;

/** The house as entered and the fuel burned in it: loss for each degree, W/K, and heat on the cold night, W. */
export type Witnesses = {
  readonly house: { readonly loss: Spread; readonly heating: Spread };
  readonly fuel: { readonly loss: Spread; readonly heating: Spread };
  /** K between indoors and outdoors on that night. */
  readonly degrees: Spread;
};

/**
 * What the house as entered and last winter's fuel say together. They share no input but the cold night itself, so
 * their losses for each degree are joined as independent. Where they contradict, or the fuel adds next to nothing,
 * the house's own range stands.
 */
export function narrow({ house, fuel, degrees }: Witnesses, rec?: WorkingRecorder): Narrowed {
  const { overlap, range } = jointRange(house.loss, fuel.loss);
  rec?.step('K_house', 'table', {}, house.loss.likely, 'W/K', 'loads.transmission');
  rec?.step('overlap', 'table', {}, overlap, '', 'loads.joint');
  const own = { by: 'fuel', overlap, fuel: { lossPerDegree: fuel.loss, heating: fuel.heating } } as const;
  const stands = { lossPerDegree: house.loss, heating: house.heating };
  if (!range || overlap < overlapLeast) return { ...own, ...stands, verdict: 'contradicts' };
  const { lossPerDegree, heating } = together({ house, fuel, degrees }, range);
  const kept = (joint: Range, before: Range) => joint.high - joint.low > widthMost * (before.high - before.low);
  if (kept(lossPerDegree, house.loss) || kept(heating, house.heating))
    return { ...own, ...stands, verdict: 'adds-nothing' };
  rec?.step('K', 'table', {}, lossPerDegree.likely, 'W/K', 'loads.joint');
  const inputs = { K: lossPerDegree.likely, dT: degrees.likely };
  rec?.step('Q', 'K * dT', inputs, heating.likely, 'W', 'loads.transmission');
  return { ...own, lossPerDegree, heating, verdict: 'narrows' };
}

/**
 * The joint range carried to the cold night, and what each unknown is still worth: by the rule that the surer witness
 * counts more, each by the inverse square of its width. What moves the night's temperature is narrowed by nobody.
 */
function together({ house, fuel, degrees }: Witnesses, range: Range): { lossPerDegree: Spread; heating: Spread } {
  const [h, f] = [(house.loss.high - house.loss.low) ** 2, (fuel.loss.high - fuel.loss.low) ** 2];
  const ofHouse = f / (h + f);
  const scaled = (drivers: readonly Driver[], by: number): Driver[] =>
    drivers.map((d) => ({ path: d.path, atLow: d.atLow * by, atHigh: d.atHigh * by }));
  const lossDrivers = [...scaled(house.loss.drivers, ofHouse), ...scaled(fuel.loss.drivers, 1 - ofHouse)];
  const likely = range.likely * degrees.likely;
  const ofNight = new Set(degrees.drivers.map((d) => d.path));
  const nightDrivers = scaled(
    house.heating.drivers.filter((d) => ofNight.has(d.path)),
    range.likely / house.loss.likely,
  );
  const others = scaled(
    lossDrivers.filter((d) => !ofNight.has(d.path)),
    degrees.likely,
  );
  const up = rootOf(nightDrivers, (d) => Math.max(d.atLow, d.atHigh, 0));
  const down = rootOf(nightDrivers, (d) => Math.min(d.atLow, d.atHigh, 0));
  return {
    lossPerDegree: { ...range, drivers: ranked(lossDrivers) },
    heating: {
      low: likely - Math.hypot((range.likely - range.low) * degrees.likely, down),
      likely,
      high: likely + Math.hypot((range.high - range.likely) * degrees.likely, up),
      drivers: ranked([...nightDrivers, ...others]),
    },
  };
}

const rootOf = (drivers: readonly Driver[], shift: (d: Driver) => number): number =>
  Math.sqrt(drivers.reduce((sum, d) => sum + shift(d) ** 2, 0));

const reach = (d: Driver): number => Math.max(Math.abs(d.atLow), Math.abs(d.atHigh));
const ranked = (drivers: readonly Driver[]): Driver[] =>
  drivers.toSorted((a, b) => reach(b) - reach(a) || (a.path < b.path ? -1 : 1));
