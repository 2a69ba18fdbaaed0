import type { ResolvedProject } from '@kneewall/project';
import { heatOfVapour, humidityRatio } from '../physics/air/index.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import type { Envelope } from '../physics/infiltration/index.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { AtticModel } from './attic.ts';
import { atticTemperature } from './attic.ts';
import type { Element, HouseElements, PartId } from './element.ts';
import {
  atticAtHour,
  atticOf,
  envelopeOf,
  type HourlyAttic,
  leakageConductance,
  leakShares,
  leaksOf,
  type Weather,
} from './house.ts';
import { ownLoss, ownLossOf } from './learned/ownLoss.ts';
import { scaledAttic, scaledElements, scaledLeaks } from './learned/scaled.ts';
import { learnedTimes } from './learned/times.ts';
import { elementsOfAnswers } from './quick.ts';
import type { AtticHour, LoadPart } from './result.ts';
import { elementsOfRooms } from './rooms.ts';
import type { Plane, PlaneSun } from './sunlight.ts';

/** W sensible and latent of a person at rest. Source: `loads.people`. */
const personSensible = 67;
const personLatent = 59;
/** An unheated room's share of the way from indoors to outdoors. Source: `loads.unheated`. */
const unheatedShare = 0.5;

export type Heat = { readonly room: string; readonly part: PartId; readonly subject: string; readonly heat: number };

/** The steady sums of one scenario. */
export type Balance = {
  readonly built: HouseElements;
  readonly envelope: Envelope;
  readonly attic: AtticModel | undefined;
  readonly atticNight: number | undefined;
  /** Of the hot day, hour by hour. */
  readonly atticHours: readonly AtticHour[] | undefined;
  readonly heating: readonly Heat[];
  readonly cooling: readonly Heat[];
  readonly latent: number;
  readonly hour: number;
  /** W/K of everything at the design night. */
  readonly lossPerDegree: number;
  readonly gains: number;
  readonly leak: { readonly coefficient: number; readonly exponent: number };
  /** Each room's share of it. */
  readonly shares: Readonly<Record<string, number>>;
};

export type Given = {
  readonly house: ResolvedProject['house'];
  readonly site: ResolvedProject['site'];
  readonly weather: Weather;
  readonly planes: (plane: Plane) => PlaneSun;
};

/** Every path of heat at the cold night and at the hot day's worst hour. Parts add up to the house. */
export function balance({ house, site, weather, planes }: Given, s: Scenario, rec?: WorkingRecorder): Balance {
  const setting = { day: weather.day, planes };
  const rooms = Object.keys(house.rooms).length > 0 && Object.keys(house.surfaces).length > 0;
  const entered = rooms ? elementsOfRooms(house, s, setting, rec) : elementsOfAnswers(house, s, setting, rec);
  const volume = Object.values(entered.volumes).reduce((a, b) => a + b, 0);
  const tight = envelopeOf(house, site, volume, s, rec);
  const over = entered.atticFloor > 0 ? atticOf(house, entered, s, { pressure: weather.pressure, planes }) : undefined;
  const at = { pressure: weather.pressure, ground: weather.groundMean };
  const times = learnedTimes(house, s, (x) =>
    x === s ? ownLoss({ built: entered, envelope: tight, attic: over, ...at }) : ownLossOf(house, site, at, x),
  );
  if (times !== 1) rec?.step('f', 'table', {}, times, '', 'loads.learned');
  const built = scaledElements(entered, times);
  const envelope = scaledLeaks(tight, times);
  const attic = scaledAttic(over, times);
  const shares = leakShares(leaksOf(built), built.volumes);
  const indoorNight = s.of(house.setpoints.heating);
  const outdoorNight = s.of(weather.night.outdoor);
  const airNight = leakageConductance(
    envelope,
    indoorNight - outdoorNight,
    s.of(weather.night.wind),
    weather.pressure,
    outdoorNight,
    rec,
  );
  const atticNight =
    attic &&
    atticTemperature(
      atticAtHour(attic, 12),
      { mode: 'heating', outdoor: outdoorNight, indoor: indoorNight, ductHeat: 0 },
      rec,
    );
  const night = {
    indoor: indoorNight,
    outdoor: outdoorNight,
    attic: atticNight ?? outdoorNight,
    ground: weather.groundMean,
  };
  const heating = [
    ...built.elements.map((e) => heatOf(e, e.part, e.conductance * (night.indoor - otherSide(e, night)))),
    ...airShares(shares, airNight * (night.indoor - night.outdoor)),
  ];
  if (rec) recordNight(built, night, airNight, shares, heating, rec);
  const hot = worstHour({ house, site, weather, planes }, built, envelope, shares, attic, s);
  const total = heating.reduce((a, h) => a + h.heat, 0);
  return {
    built,
    envelope,
    attic: hot.attic,
    atticNight,
    atticHours: hot.atticHours,
    heating,
    cooling: hot.cooling,
    latent: hot.latent,
    hour: hot.hour,
    lossPerDegree: total / (night.indoor - night.outdoor),
    gains: internalGains(house, s),
    leak: { coefficient: envelope.coefficient, exponent: envelope.exponent },
    shares,
  };
}

/** Takes down each path's heat as it was computed, and their sum in the order in which it was made. */
function recordNight(
  built: HouseElements,
  t: Around,
  air: number,
  shares: Readonly<Record<string, number>>,
  heating: readonly Heat[],
  rec: WorkingRecorder,
): void {
  built.elements.forEach((e, i) => {
    const inputs = { UA: e.conductance, t_in: t.indoor, t_other: otherSide(e, t) };
    rec.step(`q${i + 1}`, 'UA * (t_in - t_other)', inputs, heating[i]?.heat ?? 0, 'W', 'loads.transmission');
  });
  Object.values(shares).forEach((share, k) => {
    const i = built.elements.length + k;
    const inputs = { G_air: air, t_in: t.indoor, t_out: t.outdoor, share };
    rec.step(`q${i + 1}`, 'G_air * (t_in - t_out) * share', inputs, heating[i]?.heat ?? 0, 'W', 'loads.leakage');
  });
  const terms = Object.fromEntries(heating.map((h, i) => [`q${i + 1}`, h.heat]));
  rec.step('Q', Object.keys(terms).join(' + '), terms, sumOf(heating), 'W', 'loads.transmission');
}

const heatOf = (e: Element, part: PartId, heat: number): Heat => ({ room: e.room, part, subject: e.subject, heat });

type Around = { readonly indoor: number; readonly outdoor: number; readonly attic: number; readonly ground: number };

function otherSide(e: Element, t: Around): number {
  if (e.side === 'attic') return t.attic;
  if (e.side === 'ground') return t.ground;
  return e.side === 'unheated' ? t.indoor + unheatedShare * (t.outdoor - t.indoor) : t.outdoor;
}

const airShares = (shares: Readonly<Record<string, number>>, heat: number): Heat[] =>
  Object.entries(shares).map(([room, share]) => ({ room, part: 'air', subject: 'air', heat: heat * share }));

const internalGains = (house: Given['house'], s: Scenario): number =>
  s.of(house.people.count) * personSensible + s.of(house.people.appliances);

type HotHour = {
  readonly cooling: readonly Heat[];
  readonly latent: number;
  readonly hour: number;
  readonly attic: AtticModel | undefined;
  readonly atticHours: Balance['atticHours'];
};

/** The hour of the hot day in which the whole house takes most sensible heat. No storage is counted. */
function worstHour(
  { house, weather }: Given,
  built: HouseElements,
  envelope: ReturnType<typeof envelopeOf>,
  shares: Readonly<Record<string, number>>,
  attic: HourlyAttic | undefined,
  s: Scenario,
): HotHour {
  const indoor = s.of(house.setpoints.cooling);
  // A shifted afternoon moves every hour alike.
  const shift = s.of(weather.day.outdoor) - weather.day.outdoor.likely;
  const wind = s.of(weather.day.wind);
  const at = weather.day.hours.map((h, i) => {
    const outdoor = h.outdoor + shift;
    const model = attic && atticAtHour(attic, i);
    const t = model && atticTemperature(model, { mode: 'cooling', outdoor, indoor, ductHeat: 0 });
    const around = { indoor, outdoor, attic: t ?? outdoor, ground: weather.groundMean };
    const air = leakageConductance(envelope, outdoor - indoor, wind, weather.pressure, outdoor);
    return {
      index: i,
      hour: h.hour,
      around,
      air,
      model,
      t,
      total: pathSum(built, around, i) + air * (outdoor - indoor),
    };
  });
  const worst = at.reduce((a, b) => (b.total > a.total ? b : a));
  const wRoom = humidityRatio({ t: indoor, rh: s.of(house.setpoints.humidity) }, weather.pressure);
  const wet = Math.max(0, (worst.air / heatOfAir) * (weather.day.humidityRatio - wRoom) * heatOfVapour);
  return {
    cooling: hotHeats(built, worst.around, worst.index, worst.air * (worst.around.outdoor - indoor), shares, house, s),
    latent: wet + s.of(house.people.count) * personLatent,
    hour: worst.hour,
    attic: worst.model,
    atticHours: attic && at.map(({ t, model }) => ({ air: t ?? indoor, sunRise: model?.sunRise ?? 0 })),
  };
}

/** Heat through all paths and from the sun in one hour, W; people and appliances are the same in every hour. */
function pathSum(built: HouseElements, around: Around, index: number): number {
  let sum = 0;
  for (const e of built.elements) sum += e.conductance * (otherSide(e, around) - around.indoor) + (e.sun[index] ?? 0);
  return sum;
}

function hotHeats(
  built: HouseElements,
  around: Around,
  index: number,
  air: number,
  shares: Readonly<Record<string, number>>,
  house: Given['house'],
  s: Scenario,
): Heat[] {
  const people = s.of(house.people.count) * personSensible;
  const appliances = s.of(house.people.appliances);
  const volume = Object.values(built.volumes).reduce((a, b) => a + b, 0);
  const inside = Object.entries(built.volumes).flatMap(([room, mine]): Heat[] => [
    { room, part: 'people', subject: 'people', heat: (people * mine) / volume },
    { room, part: 'appliances', subject: 'appliances', heat: (appliances * mine) / volume },
  ]);
  // Once for every input moved: a list grown in place, not a list of lists.
  const paths: Heat[] = [];
  for (const e of built.elements) {
    paths.push(heatOf(e, e.part, e.conductance * (otherSide(e, around) - around.indoor)));
    const sun = e.sun[index] ?? 0;
    if (sun > 0) paths.push(heatOf(e, 'sun', sun));
  }
  paths.push(...airShares(shares, air), ...inside);
  return paths;
}

/** Sums by part, largest first. */
export function byPart(heats: readonly Heat[]): LoadPart[] {
  const sums = new Map<PartId, number>();
  for (const h of heats) sums.set(h.part, (sums.get(h.part) ?? 0) + h.heat);
  return [...sums]
    .map(([part, heat]) => ({ part, heat }))
    .sort((a, b) => b.heat - a.heat || (a.part < b.part ? -1 : 1));
}

export const inRoom = (heats: readonly Heat[], room: string): LoadPart[] =>
  heats
    .filter((h) => h.room === room)
    .map(({ part, subject, heat }) => ({ part, subject, heat }))
    .sort((a, b) => b.heat - a.heat);

export const sumOf = (heats: readonly { readonly heat: number }[]): number => heats.reduce((a, h) => a + h.heat, 0);
