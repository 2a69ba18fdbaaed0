import type { ResolvedProject } from '@kneewall/project';
import type { DesignDay, DesignNight } from '../climate/result.ts';
import { airDensity } from '../physics/air/index.ts';
import { rad } from '../physics/exact.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import { type Envelope, leakageCoefficient, leakageFlow, usualExponent } from '../physics/infiltration/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { AtticModel } from './attic.ts';
import { draughtGiven } from './constructions/index.ts';
import type { HouseElements } from './element.ts';
import { fourSides, skyDrop, sunFilm } from './outside.ts';
import type { PlaneSun } from './sunlight.ts';

type House = ResolvedProject['house'];
type Site = ResolvedProject['site'];

/** Conductances round the attic from the roof's own fields, and what the sun adds to its roof by hour of the hot day, K. */
export function atticOf(
  house: House,
  built: HouseElements,
  s: Scenario,
  at: { pressure: number; planes: (plane: { tilt: number; azimuth: number }) => PlaneSun },
): HourlyAttic {
  const { roof } = house;
  const pitch = s.of(roof.pitch);
  const area = built.atticFloor / Math.cos(pitch * rad);
  const deck = 1 / (1 / s.of(roof.uValue) + 0.1 + 0.04);
  // Half a square house's width times the slope is the ridge; the mean height is half of that.
  const height = (Math.sqrt(built.atticFloor) / 2) * Math.tan(pitch * rad) * 0.5;
  const airChanges = s.choice(house.attic) === 'sealed' ? 0.5 : s.of(roof.airChanges);
  const air = airDensity(20, at.pressure) * heatOfAir;
  const absorptance = s.of(roof.absorptance);
  const slopes = fourSides.map((azimuth) => at.planes({ tilt: pitch, azimuth }));
  const sunRises = Array.from({ length: 24 }, (_, h) => {
    const sun = slopes.reduce((sum, p) => sum + ((p.beam[h] ?? 0) + (p.diffuse[h] ?? 0)) / 4, 0);
    return (absorptance * sun) / sunFilm - skyDrop;
  });
  const ceiling = built.elements.reduce((a, e) => a + (e.side === 'attic' ? e.conductance : 0), 0);
  return {
    ceiling,
    roof: deck * area,
    vents: (airChanges * built.atticFloor * height * air) / 3600,
    skyDrop,
    sunRises,
  };
}

export type HourlyAttic = Omit<AtticModel, 'sunRise'> & { readonly sunRises: readonly number[] };

/** The attic at one hour of the hot day. */
export function atticAtHour(attic: HourlyAttic, index: number): AtticModel {
  const { ceiling, roof, vents, sunRises } = attic;
  return { ceiling, roof, vents, skyDrop: attic.skyDrop, sunRise: sunRises[index] ?? 0 };
}

const shelterClass = { none: 1, light: 2, moderate: 3, heavy: 4, dense: 5 } as const;

/** How the house leaks: coefficient from a blower door, or from what people feel. */
export function envelopeOf(house: House, site: Site, volume: number, s: Scenario, rec?: WorkingRecorder): Envelope {
  const given = 'missing' in house.airtightness ? guess(house) : house.airtightness;
  rec?.given('ACH50', given);
  const storeys = Math.max(1, Math.min(3, Math.round(s.of(house.storeys))));
  return {
    coefficient: leakageCoefficient(s.of(given), volume, usualExponent, rec),
    exponent: usualExponent,
    storeys: storeys as 1 | 2 | 3,
    crawlSpace: s.choice(house.below) === 'crawl',
    flue: house.flue,
    shelter: shelterClass[s.choice(site.shelter)],
  };
}

const guess = (house: House) =>
  'missing' in house.draught ? unresolved('missing', house.draught.path) : draughtGiven(house.draught);

/** Heat that leaking air carries for each degree, W/K. */
export function leakageConductance(
  e: Envelope,
  difference: number,
  wind: number,
  pressure: number,
  outdoor: number,
  rec?: WorkingRecorder,
): number {
  const flow = leakageFlow(e, difference, wind, rec);
  const density = airDensity(outdoor, pressure);
  const g = flow * density * heatOfAir;
  rec?.step('G_air', 'Q * rho * c_p', { Q: flow, rho: density, c_p: heatOfAir }, g, 'W/K', 'loads.leakage');
  return g;
}

/** Each room's share of the leaking air: by its outside walls and windows, by volume where none has any. m² and m³ by room. */
export function leakShares(
  outside: Readonly<Record<string, number>>,
  volumes: Readonly<Record<string, number>>,
): Record<string, number> {
  const rooms = Object.keys(volumes);
  const total = rooms.reduce((a, r) => a + (outside[r] ?? 0), 0);
  const volume = Object.values(volumes).reduce((a, b) => a + b, 0);
  return Object.fromEntries(rooms.map((r) => [r, total > 0 ? (outside[r] ?? 0) / total : (volumes[r] ?? 0) / volume]));
}

/** m² of outside walls and windows by room. */
export const leaksOf = ({ elements, volumes }: HouseElements): Record<string, number> =>
  Object.fromEntries(
    Object.keys(volumes).map((room) => [room, elements.reduce((a, e) => a + (e.room === room ? e.leaks : 0), 0)]),
  );

/** Which way each room's leaking walls and windows face, and the share of them that faces so; rooms with none are left out. */
export const leakFaces = ({ elements, volumes }: HouseElements): Record<string, readonly LeakFace[]> =>
  Object.fromEntries(
    Object.keys(volumes).flatMap((room) => {
      const own = elements.filter((e) => e.room === room && e.leaks > 0 && e.faces !== undefined);
      const total = own.reduce((a, e) => a + e.leaks, 0);
      const ways = [...new Set(own.map((e) => e.faces ?? 0))];
      const share = (faces: number) => own.reduce((a, e) => (e.faces === faces ? a + e.leaks : a), 0) / total;
      return own.length > 0 ? [[room, ways.map((faces) => ({ faces, share: share(faces) }))]] : [];
    }),
  );

export type Weather = {
  readonly night: DesignNight;
  readonly day: DesignDay;
  readonly pressure: number;
  readonly groundMean: number;
};

/** A share of a room's leaking walls, and the way it faces, degrees from north. */
export type LeakFace = { readonly faces: number; readonly share: number };
