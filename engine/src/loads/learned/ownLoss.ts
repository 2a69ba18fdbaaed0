import type { ResolvedProject } from '@kneewall/project';
import type { Envelope } from '../../physics/infiltration/index.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { atticTemperature } from '../attic.ts';
import type { HouseElements } from '../element.ts';
import { atticOf, envelopeOf, leakageConductance } from '../house.ts';
import { elementsOfAnswers } from '../quick.ts';
import { elementsOfRooms } from '../rooms.ts';
import type { PlaneSun } from '../sunlight.ts';

/** The weather in which houses are held against each other: common winter weather of logs. Source: `loads.learned`. */
const usual = { indoor: 20, outdoor: -4, wind: 5, skyDrop: 0 } as const;

/** A house in one scenario, before anything that was learned. `pressure` Pa, `ground` °C. */
export type Own = {
  readonly built: HouseElements;
  readonly envelope: Envelope;
  readonly attic: { readonly ceiling: number; readonly roof: number; readonly vents: number } | undefined;
  readonly pressure: number;
  readonly ground: number;
};

/** W/K that a house loses in usual winter weather, shell and leaks. */
export function ownLoss({ built, envelope, attic, pressure, ground }: Own): number {
  const { indoor, outdoor, wind, skyDrop } = usual;
  const above = attic && { ...attic, skyDrop, sunRise: 0 };
  const over = above ? atticTemperature(above, { mode: 'heating', outdoor, indoor, ductHeat: 0 }) : outdoor;
  const other = { outdoors: outdoor, attic: over, ground, unheated: (indoor + outdoor) / 2 };
  const degrees = indoor - outdoor;
  const through = built.elements.reduce((a, e) => a + e.conductance * (indoor - other[e.side]), 0);
  return through / degrees + leakageConductance(envelope, degrees, wind, pressure, outdoor);
}

/** Nothing shines: what lets heat through hangs on no sun. */
const dark: PlaneSun = { beam: [], diffuse: [], throughGlass: { 1: [], 2: [] } };

/** The same, read from the project. */
export function ownLossOf(
  house: ResolvedProject['house'],
  site: ResolvedProject['site'],
  at: Pick<Own, 'pressure' | 'ground'>,
  s: Scenario,
): number {
  const setting = { planes: () => dark, day: { hours: [] } };
  const rooms = Object.keys(house.rooms).length > 0 && Object.keys(house.surfaces).length > 0;
  const built = rooms ? elementsOfRooms(house, s, setting) : elementsOfAnswers(house, s, setting);
  const volume = Object.values(built.volumes).reduce((a, b) => a + b, 0);
  const envelope = envelopeOf(house, site, volume, s);
  const around = { pressure: at.pressure, planes: () => dark };
  const attic = built.atticFloor > 0 ? atticOf(house, built, s, around) : undefined;
  return ownLoss({ built, envelope, attic, ...at });
}
