import type { Given, ResolvedProject } from '@kneewall/project';
import type { ClimateMonth, DesignDay, DesignNight } from '../../climate/result.ts';
import type { KeptWalls } from '../../physics/building/index.ts';
import {
  firstOrderIndices,
  percentiles,
  rightMoreOften,
  sobolPoints,
  triangular,
} from '../../physics/sampling/index.ts';
import { rangesRead, type Scenario, scenario, scenarioOf } from '../../plan/scenario.ts';
import { sizeOf } from '../unitSizes.ts';
import { dayLoad, nightLoad } from './designDays.ts';
import { dayWeather, nightWeather } from './designWeather.ts';
import type { YearWave } from './ground.ts';
import { houseInputs } from './houseInputs.ts';

/** A house with all its ranges, the weather of its design days, and how many samples are drawn from which seed. */
export type StudyInputs = {
  readonly house: ResolvedProject['house'];
  readonly site: ResolvedProject['site'];
  readonly night: DesignNight;
  readonly day: DesignDay;
  readonly months: readonly ClimateMonth[];
  readonly wave: YearWave;
  readonly latitude: number;
  readonly pressure: number;
  readonly samples: number;
  readonly seed: number;
};

/** Tenth, fiftieth and ninetieth percentile. */
export type Tenths = { readonly p10: number; readonly p50: number; readonly p90: number };

export type RankedUnknown = {
  readonly path: string;
  /** Share of the variance of the heating load, and of the cooling load, that goes once this is known. */
  readonly heating: number;
  readonly cooling: number;
  /** How much more often the right size of unit would be bought if it were known, 0 to 1. */
  readonly decides: number;
};

export type Study = {
  readonly samples: number;
  readonly heating: Tenths;
  readonly cooling: Tenths;
  readonly latent: Tenths;
  readonly rooms: Readonly<Record<string, { readonly heating: Tenths; readonly cooling: Tenths }>>;
  /** Those that would clearly decide the purchase most often first, then by their share of the heating load. */
  readonly unknowns: readonly RankedUnknown[];
};

/** Hours are enough for differences between samples; days until a repeated day counts. */
const step = 3600;
const settling = 8;

/** What one sample is made into. Columns: house heating, house cooling, latent, then each room's heating and cooling. */
function model(inputs: StudyInputs, s: Scenario): { house: ReturnType<typeof houseInputs>; run: () => number[] } {
  const { site, latitude, pressure } = inputs;
  const place = { latitude, pressure };
  const house = houseInputs(inputs.house, site, pressure, inputs.wave, s);
  const night = nightWeather(inputs.night, inputs.months, place, s);
  const day = dayWeather(inputs.day, place, s);
  return {
    house,
    run: () => {
      const kept: KeptWalls = new Map();
      const cold = nightLoad(house, night, { ...house.wanted, setback: 0 }, { step, settling, kept });
      const hot = dayLoad(house, day, { step, settling, kept });
      const rooms = house.shell.rooms.flatMap((r) => [cold.rooms[r.id] ?? 0, hot.rooms[r.id]?.atWorst ?? 0]);
      return [cold.house, hot.sensible[hot.worst] ?? 0, hot.latent[hot.worst] ?? 0, ...rooms];
    },
  };
}

/** The inputs that are not known to a number. */
export const unknownsOf = (inputs: StudyInputs): Given[] => rangesRead((s) => model(inputs, s));

/** Each sample's place between 0 and 1 for each unknown. */
const pointsOf = (inputs: StudyInputs, unknowns: readonly Given[]): Float64Array =>
  sobolPoints(unknowns.length, inputs.samples, inputs.seed);

/** The outputs of the house at one point, each unknown as far along as its point says in every number that hangs on it. */
export function outputsAt(inputs: StudyInputs, unknowns: readonly Given[], point: ArrayLike<number>): number[] {
  const places = new Map(unknowns.map((g, d) => [g.path, point[d] ?? 0.5]));
  const numberFor = (given: Given): number | undefined => {
    const place = places.get(given.path);
    return place === undefined ? undefined : triangular(place, given);
  };
  return model(inputs, scenarioOf(numberFor)).run();
}

/** Runs samples `from` up to `to`; rows of outputs. Any split of the samples gives the same rows. */
export function studyRows(inputs: StudyInputs, from: number, to: number, tell: (done: number) => void): number[][] {
  const unknowns = unknownsOf(inputs);
  const points = pointsOf(inputs, unknowns);
  const k = unknowns.length;
  return Array.from({ length: to - from }, (_, i) => {
    const row = from + i;
    if (i % 8 === 0) tell(i);
    return outputsAt(inputs, unknowns, points.subarray(row * k, (row + 1) * k));
  });
}

/** Percentiles and ranking from the rows of all samples, in their order. */
export function studyAnswers(inputs: StudyInputs, rows: readonly (readonly number[])[]): Study {
  const unknowns = unknownsOf(inputs);
  const points = pointsOf(inputs, unknowns);
  const column = (c: number): Float64Array => Float64Array.from(rows, (r) => r[c] ?? Number.NaN);
  const heating = firstOrderIndices(points, column(0), unknowns.length);
  const cooling = firstOrderIndices(points, column(1), unknowns.length);
  const sizes = column(0).map(sizeOf);
  const decides = rightMoreOften(points, sizes, unknowns.length);
  const ranked = unknowns.map((g, d) => ({
    path: g.path,
    heating: heating[d] ?? 0,
    cooling: cooling[d] ?? 0,
    decides: decides[d] ?? 0,
  }));
  const { rooms } = model(inputs, scenario()).house.shell;
  return {
    samples: rows.length,
    heating: tenths(column(0)),
    cooling: tenths(column(1)),
    latent: tenths(column(2)),
    rooms: Object.fromEntries(
      rooms.map((r, i) => [r.id, { heating: tenths(column(3 + 2 * i)), cooling: tenths(column(4 + 2 * i)) }]),
    ),
    unknowns: ranked.sort(
      (a, b) => sure(b.decides) - sure(a.decides) || b.heating - a.heating || (a.path < b.path ? -1 : 1),
    ),
  };
}

/** What a thousand samples cannot tell from chance does not rank. */
const sure = (decides: number): number => (decides >= 0.02 ? decides : 0);

function tenths(x: Float64Array): Tenths {
  const [p10 = 0, p50 = 0, p90 = 0] = percentiles(x, [0.1, 0.5, 0.9]);
  return { p10, p50, p90 };
}
