import type { Given, Missing, ResolvedProject } from '@kneewall/project';
import type { ClimateBasis, TemperatureBin } from '../climate/result.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';

type Fuel = ResolvedProject['house']['fuel'];

/** What last winter is read from: the fuel, the weather it met, and the heat that came from people and appliances, W. */
export type LastWinter = {
  readonly fuel: Fuel;
  readonly basis: ClimateBasis;
  readonly bins: readonly TemperatureBin[];
  readonly gains: number;
};

/** Share of a fuel's energy that reached the rooms: stove or boiler and pipes together. Source: `loads.fuel-share`. */
const shares: Readonly<Record<string, readonly [number, number, number]>> = {
  wood: [0.5, 0.65, 0.8],
  pellets: [0.65, 0.8, 0.88],
  oil: [0.55, 0.75, 0.88],
  propane: [0.55, 0.78, 0.93],
  gas: [0.55, 0.78, 0.93],
  electricity: [0.8, 1, 1],
};

/** The share as entered, else as the fuel has it. */
export function shareGiven(fuel: Fuel): Given | Missing {
  if (!('missing' in fuel.efficiency) || 'missing' in fuel.kind) return fuel.efficiency;
  const [low, likely, high] = shares[fuel.kind.choice] ?? [0.5, 0.65, 0.8];
  return { path: fuel.efficiency.path, kind: 'fraction', known: 'assumed', low, likely, high };
}

/** Degree-hours of last winter as a share of the usual winter's, whose bins are used. Source: `loads.winter-weather`. */
const coldness = (basis: ClimateBasis): Given => ({
  path: 'house.fuel.energy#winter',
  kind: 'fraction',
  known: 'assumed',
  ...(basis === 'assumed' ? { low: 0.8, likely: 1, high: 1.25 } : { low: 0.9, likely: 1, high: 1.1 }),
});

/**
 * Loss for each degree on the cold night as a multiple of the winter's mean: wind and cold draw harder on the cracks
 * then, and through the winter some sun helped. Source: `loads.winter-night`.
 */
const nightOverMean: Given = {
  path: 'house.fuel.energy#night',
  kind: 'number',
  known: 'assumed',
  low: 0.95,
  likely: 1.1,
  high: 1.3,
};

/**
 * Loss for each degree on the cold night, W/K, as last winter's fuel tells it and nothing that is known of the walls.
 * Fuel that brought no heat, or a house kept colder than it was outdoors, tells nothing: `out-of-range`.
 */
export function lossByFuel({ fuel, basis, bins, gains }: LastWinter, s: Scenario, rec?: WorkingRecorder): number {
  const told = toldBy(fuel, bins);
  const cold = coldness(basis);
  const burned = s.of(told.energy) * s.of(told.share);
  const heat = burned / s.of(cold);
  const indoor = s.of(told.indoor);
  const mean = lossOfWinter(bins, heat, indoor, gains);
  const loss = mean * s.of(nightOverMean);
  if (rec) {
    rec.given('E', told.energy);
    rec.given('share', told.share);
    rec.step('E_rooms', 'E * share', { E: s.of(told.energy), share: s.of(told.share) }, burned, 'kWh', 'loads.fuel');
    rec.step('E_usual', 'E_rooms / cold', { E_rooms: burned, cold: s.of(cold) }, heat, 'kWh', 'loads.winter-weather');
    const residual = heatOfWinter(bins, mean, indoor, gains) / heat - 1;
    rec.step('K_mean', 'solved', { residual, t_in: indoor, gains }, mean, 'W/K', 'loads.fuel');
    const factor = { K_mean: mean, night: s.of(nightOverMean) };
    rec.step('K_fuel', 'K_mean * night', factor, loss, 'W/K', 'loads.winter-night');
  }
  return loss;
}

/** The three things that have to be known, and that they can tell anything. */
function toldBy(fuel: Fuel, bins: readonly TemperatureBin[]): Record<'energy' | 'share' | 'indoor', Given> {
  const { energy, indoor } = fuel;
  const share = shareGiven(fuel);
  if ('missing' in energy) return unresolved('missing', energy.path);
  if ('missing' in share) return unresolved('missing', share.path);
  if ('missing' in indoor) return unresolved('missing', indoor.path);
  if (energy.likely * share.likely <= 0) return unresolved('out-of-range', energy.path);
  if (!bins.some((b) => b.centre < indoor.low)) return unresolved('out-of-range', indoor.path);
  return { energy, share, indoor };
}

/** kWh that a house of this loss, W/K, takes from its heating in those hours, other gains (W) used first. */
export const heatOfWinter = (bins: readonly TemperatureBin[], loss: number, indoor: number, gains: number): number =>
  bins.reduce((sum, b) => sum + b.hours * Math.max(0, loss * (indoor - b.centre) - gains), 0) / 1000;

/**
 * The loss, W/K, at which a winter takes `heat` kWh: the inverse of `heatOfWinter`, exact. The heat is straight between
 * the losses at which the next warmer hours begin to need any; the walk goes from the coldest hours up. `bins` rise.
 */
export function lossOfWinter(bins: readonly TemperatureBin[], heat: number, indoor: number, gains: number): number {
  let degreeHours = 0;
  let hours = 0;
  let loss = 0;
  for (const b of bins) {
    const degrees = indoor - b.centre;
    if (degrees <= 0) break;
    if (degreeHours > 0 && loss * degrees <= gains) break;
    degreeHours += b.hours * degrees;
    hours += b.hours;
    loss = (1000 * heat + hours * gains) / degreeHours;
  }
  return loss;
}
