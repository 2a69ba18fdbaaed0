import type { ClimateResult } from '../climate/result.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, type Spread, scenario, spread } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { type Balance, balance, byPart, type Given, inRoom, sumOf } from './balance.ts';
import { houseJobs, pendingOn } from './dynamic/houseJobs.ts';
import { heatOfWinter, type LastWinter, lossByFuel, shareGiven } from './fuel.ts';
import { leakFaces } from './house.ts';
import { learnedHouse } from './learned/learnedHouse.ts';
import { narrow } from './narrow.ts';
import type { AtticHour, LoadsResult, RoomLoad } from './result.ts';
import { sunOnPlanes } from './sunlight.ts';

/** Heat lost at the cold night and gained at the hot hour, room by room, with what each unknown is worth. Pure. */
export function design(input: TradeInput<'climate'>): LoadsResult {
  const { house, site } = input.project;
  const { climate } = input.upstream;
  const learned = learnedHouse(house, (entered) => design({ ...input, project: { ...input.project, house: entered } }));
  const basis = Object.keys(house.rooms).length > 0 && Object.keys(house.surfaces).length > 0 ? 'rooms' : 'quick';
  const given = attempt((): Given => {
    const day = required(climate.day);
    const months = required(climate.months);
    const groundMean = months.reduce((a, m) => a + m.mean, 0) / 12;
    const weather = { night: required(climate.night), day, pressure: required(climate.pressure), groundMean };
    return { house, site, weather, planes: sunOnPlanes(day, scenario().of(site.groundReflectance)) };
  });
  const { recorder, steps } = recordWorking();
  const likely = attempt(() => balance(required(given), scenario(), recorder));
  const spreads = attempt(() => spread((s) => outputs(required(given), climate, s)));
  const jobs = houseJobs({ house, site }, climate);
  const pick = (key: string): Outcome<Spread> => attempt(() => found(required(spreads), key));
  const second = recordWorking();
  const narrowed = attempt(() => {
    // Told once more in the likely scenario, for the working, and for the reason where nothing is told.
    lossByFuel(lastWinter(house, climate, required(likely)), scenario(), second.recorder);
    const degrees = required(pick('degrees'));
    if (degrees.low <= 0) unresolved('out-of-range', 'site.coldNight');
    const own = { loss: required(pick('loss')), heating: required(pick('heating')) };
    const fuel = { loss: required(pick('fuelLoss')), heating: required(pick('fuelHeating')) };
    return narrow({ house: own, fuel, degrees }, second.recorder);
  });
  return {
    basis,
    heating: pick('heating'),
    cooling: attempt(() => ({
      sensible: required(pick('cooling')),
      latent: required(pick('latent')),
      hour: required(likely).hour,
    })),
    rooms: basis === 'rooms' ? roomLoads(house, likely, pick) : {},
    heatingParts: likely.ok ? byPart(likely.value.heating) : [],
    coolingParts: likely.ok ? byPart(likely.value.cooling) : [],
    lossPerDegree: pick('loss'),
    balanceTemperature: attempt(() => balancePoint(required(likely), scenario().of(house.setpoints.heating))),
    leaks: attempt(() => {
      const { built, leak, shares } = required(likely);
      return { coefficient: required(pick('leak')), exponent: leak.exponent, shares, faces: leakFaces(built) };
    }),
    ...atticFrom(likely, pick),
    leakage: attempt(() => required(likely).envelope),
    winter: attempt(() => ({ burned: required(pick('burned')), computed: required(pick('computed')) })),
    days: pendingOn(jobs, 'days'),
    year: pendingOn(jobs, 'year'),
    study: pendingOn(jobs, 'study'),
    totals: pendingOn(jobs, 'study'),
    narrowed,
    ...(learned ? { learned } : {}),
    workings: { 'loads/heating': steps, ...(narrowed.ok ? { 'loads/narrowed': second.steps } : {}) },
    wanted: jobs.ok ? [jobs.value.days, jobs.value.year, jobs.value.study] : [],
  };
}

/** What is known of the attic, or why nothing is. */
const atticFrom = (likely: Outcome<Balance>, pick: (key: string) => Outcome<Spread>) => ({
  attic: attempt(() => required(likely).attic ?? noAttic()),
  atticNight: pick('atticNight'),
  atticDay: pick('atticDay'),
  atticHours: attempt(() => required(likely).atticHours ?? noAttic()),
  atticSunRise: attempt(() => hottestOf(required(likely).atticHours ?? noAttic()).sunRise),
});

/** The hour in which an attic is hottest: hours before the house is. Whoever works or lies in it meets that one. */
const hottestOf = (hours: readonly AtticHour[]): AtticHour => hours.reduce((a, b) => (b.air > a.air ? b : a));

const noAttic = () => required<never>({ ok: false, because: 'missing', paths: ['house.attic'] });

/** An output that this house has no place for (no attic, no fuel) is missing, not zero. */
function found(spreads: Readonly<Record<string, Spread>>, key: string): Spread {
  return spreads[key] ?? noAttic();
}

function outputs(given: Given, climate: ClimateResult, s: Scenario): Record<string, number> {
  const b = s.part('balance', (x) => balance(given, x));
  const degrees = s.of(given.house.setpoints.heating) - s.of(given.weather.night.outdoor);
  const burned = attempt(() => winter(lastWinter(given.house, climate, b), b, s));
  const byFuel = attempt(() => lossByFuel(lastWinter(given.house, climate, b), s));
  const rooms = Object.keys(b.built.volumes);
  return {
    heating: sumOf(b.heating),
    cooling: sumOf(b.cooling),
    latent: b.latent,
    loss: b.lossPerDegree,
    leak: b.leak.coefficient,
    degrees,
    ...(b.atticNight === undefined || b.atticHours === undefined
      ? {}
      : { atticNight: b.atticNight, atticDay: hottestOf(b.atticHours).air }),
    ...(burned.ok ? burned.value : {}),
    ...(byFuel.ok ? { fuelLoss: byFuel.value, fuelHeating: byFuel.value * degrees } : {}),
    ...byRoom('heating', rooms, b.heating),
    ...byRoom('cooling', rooms, b.cooling),
  };
}

/** Sums by room in one pass, in the order in which the heats stand. */
function byRoom(key: string, rooms: readonly string[], heats: Balance['heating']): Record<string, number> {
  const sums = new Map(rooms.map((room) => [room, 0]));
  for (const h of heats) sums.set(h.room, (sums.get(h.room) ?? 0) + h.heat);
  return Object.fromEntries([...sums].map(([room, sum]) => [`${key}:${room}`, sum]));
}

function roomLoads(
  house: Given['house'],
  likely: Outcome<Balance>,
  pick: (key: string) => Outcome<Spread>,
): Record<string, RoomLoad> {
  const ids = likely.ok ? Object.keys(likely.value.built.volumes) : Object.keys(house.rooms);
  return Object.fromEntries(
    ids.map((room) => [
      room,
      {
        room,
        name: house.rooms[room]?.name ?? room,
        heating: pick(`heating:${room}`),
        cooling: pick(`cooling:${room}`),
        heatingParts: likely.ok ? inRoom(likely.value.heating, room) : [],
        coolingParts: likely.ok ? inRoom(likely.value.cooling, room) : [],
      },
    ]),
  );
}

/** The outdoor temperature at which people, appliances and a little sun just hold the house. */
const balancePoint = (b: Balance, indoor: number): number => indoor - b.gains / b.lossPerDegree;

const lastWinter = (house: Given['house'], climate: ClimateResult, b: Balance): LastWinter => ({
  fuel: house.fuel,
  basis: climate.basis,
  bins: required(climate.bins),
  gains: b.gains,
});

/** kWh that reached the rooms by the fuel burned, and that the house as entered would have taken at that warmth. */
const winter = ({ fuel, bins, gains }: LastWinter, b: Balance, s: Scenario) => ({
  burned: s.of(fuel.energy) * s.of(shareGiven(fuel)),
  computed: heatOfWinter(bins, b.lossPerDegree, s.of(fuel.indoor), gains),
});
