import type { Given } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';

/** Where the numbers come from: four answers, a table of monthly normals, or an imported year. */
export type ClimateBasis = 'assumed' | 'normals' | 'weather-file';

/** The cold night the heating has to hold. */
export type DesignNight = {
  /** °C, with the path of the field it comes from, so that it counts among the unknowns. */
  readonly outdoor: Given;
  /** m/s at a weather station. */
  readonly wind: Given;
  /** kg/kg */
  readonly humidityRatio: number;
};

/** One hour of the hot day; sun in W/m², angles in degrees, azimuth clockwise from north. Local solar time. */
export type DesignHour = {
  /** The middle of it: 0.5 to 23.5. */
  readonly hour: number;
  readonly outdoor: number;
  readonly zenith: number;
  readonly azimuth: number;
  readonly beamNormal: number;
  readonly diffuseLevel: number;
};

/** The hot day the cooling has to hold. `hours` is for the likely afternoon; a shifted one moves all hours alike. */
export type DesignDay = {
  readonly outdoor: Given;
  readonly dailyRange: Given;
  readonly wind: Given;
  readonly humidityRatio: number;
  /** 1 to 12, the month whose sun is used. */
  readonly month: number;
  /** W/m² of the sun above the air on that day, facing it. */
  readonly aboveAir: number;
  readonly hours: readonly DesignHour[];
};

export type ClimateMonth = {
  readonly month: number;
  /** °C */
  readonly mean: number;
  /** K, mean of daily highest less daily lowest. */
  readonly dailyRange: number;
  readonly relativeHumidity: number;
  /** m/s */
  readonly wind: number;
  readonly clearness: number;
  /** kWh/m² a day on the level. */
  readonly sun: number;
};

/** Hours of the year by outdoor temperature; bins 3 K wide, centred on multiples of 3 °C. */
export type TemperatureBin = { readonly centre: number; readonly hours: number };

/** Filled from a weather file only. */
export type YearFacts = {
  readonly rows: number;
  readonly heating996: number;
  readonly heating99: number;
  readonly cooling004: number;
  readonly cooling01: number;
  readonly cooling02: number;
  /** K days below and above 65 °F. */
  readonly degreeDays: { readonly heating: number; readonly cooling: number };
  /** Days in a row with less than half of their month's sun. */
  readonly longestDull: number;
  /** °C and the day of the year on which the ground's surface is coldest. */
  readonly ground: { readonly mean: number; readonly amplitude: number; readonly coldestDay: number };
  readonly coldestDay: { readonly day: number; readonly mean: number };
  readonly darkestTenDays: { readonly day: number; readonly sun: number };
  /** Rank correlation between the day's cold and the day's darkness in the coldest quarter, -1 to 1. */
  readonly coldAndDark: number;
};

/** Degrees north and east, m, hours from Greenwich. */
export type Place = {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  readonly timeZone: number;
};

/** The year a house is run in: a file beside the project and how it is read, or a year made from twelve months. */
export type YearWeather =
  | { readonly kind: 'file'; readonly blob: string; readonly read: unknown }
  | { readonly kind: 'months'; readonly months: readonly ClimateMonth[]; readonly place: Place; readonly seed: number };

/** Warmth, clearness and wind of a day, in this order. */
export type Triple = readonly [number, number, number];
export type Square = readonly [Triple, Triple, Triple];

/**
 * How a winter's days hang together: correlations of warmth, clearness and wind of one day (`now`) and of one day with
 * the next (`next`, by rows: the earlier day's), of departures from the month's mean in that month's spread; and spreads.
 */
export type Ties = {
  readonly now: Square;
  readonly next: Square;
  /** Spread of daily means of temperature within a month, as a share of what is usual at that temperature. */
  readonly scatter: number;
  /** Spread of daily means of wind within a month, as a share of its mean. */
  readonly gusts: number;
  /** Mean of highest less lowest of a day, K: by which places are told apart. */
  readonly range: number;
};

/** Where many winters come from: twelve months, and how days hang together where an imported year says so. */
export type WintersWeather = {
  readonly months: readonly ClimateMonth[];
  readonly place: Place;
  readonly ties?: Ties;
  readonly seed: number;
};

/** A year that was measured: its file beside the project and how it is read. */
export type RecordedWinter = {
  readonly id: string;
  readonly name: string;
  readonly weather: Extract<YearWeather, { kind: 'file' }>;
};

/** Years that were measured, and the months, 0 to 11, in their order in time, that are the place's winter. */
export type RecordedWinters = { readonly months: readonly number[]; readonly files: readonly RecordedWinter[] };

export type ClimateResult = ResultBase & {
  readonly basis: ClimateBasis;
  readonly latitude: Outcome<number>;
  readonly elevation: Outcome<number>;
  /** Pa, from the elevation. */
  readonly pressure: Outcome<number>;
  readonly night: Outcome<DesignNight>;
  readonly day: Outcome<DesignDay>;
  readonly months: Outcome<readonly ClimateMonth[]>;
  readonly bins: Outcome<readonly TemperatureBin[]>;
  readonly facts: Outcome<YearFacts>;
  readonly year: Outcome<YearWeather>;
  readonly winters: Outcome<WintersWeather>;
  readonly recorded: Outcome<RecordedWinters>;
};
