import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Spread } from '../plan/scenario.ts';
import type { Season } from './season/season.ts';

export type UnitSpeed = 'least' | 'between' | 'rated' | 'most';

/** One row of a data sheet in plain numbers, defrost and altitude not yet applied. °C, W, m³/s. */
export type UnitRow = {
  readonly mode: 'heating' | 'cooling';
  readonly speed: UnitSpeed;
  readonly outdoor: number;
  readonly indoor: number;
  readonly indoorWetBulb?: number;
  readonly capacity: number;
  readonly power: number;
  readonly airflow?: number;
  readonly sensibleShare?: number;
  readonly defrostCounted: boolean;
};

/** A unit as its data sheet states it; plain data that moves between threads. */
export type UnitModel = {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly UnitRow[];
  /** How many times its sheet the heating rows draw by a log that its owner took into the plan; absent where nothing was. */
  readonly drawTimes?: number;
};

/** A blower table: flow m³/s falling with external static pressure Pa. */
export type BlowerTable = {
  readonly setting: string;
  readonly points: readonly { readonly flow: number; readonly pressure: number; readonly power?: number }[];
};

export type BlowerModel = {
  readonly kind: 'fixed' | 'torque' | 'airflow';
  readonly tables: readonly BlowerTable[];
  readonly staticMost?: number;
  readonly filterIncluded: boolean;
};

/** One row of a sheet by its name: what a test asks for. °C. */
export type RowName = { readonly mode: 'heating' | 'cooling'; readonly speed: UnitSpeed; readonly outdoor: number };

/** A figure by a published bin method, and the rows that the sheet would need for it. */
export type Published = { readonly season: Outcome<Season>; readonly missing: readonly RowName[] };

/** What a season's figure comes of: °C at which its heat is needed on average, and shares of that heat. */
export type Character = { readonly outdoor: number; readonly cycling: number; readonly backup: number };

/** Heat for electricity over the project's own year, backup as resistance; the range holds what the sheet leaves open. */
export type OwnSeason = {
  readonly ratio: Spread;
  readonly character: Character;
  /** `hours`: every hour of the house in its year; `bins`: hours by temperature and a straight load line. */
  readonly basis: 'hours' | 'bins';
  /** Hours with heat needed that are colder than the coldest row. */
  readonly hoursBeyond: number;
};

/** Hours of the heating season in one bin of outdoor temperature, from `from` °C up, by how the unit runs. */
export type WinterBin = {
  readonly from: number;
  /** Runs without stopping; with no lowest speed known, all hours without help. */
  readonly holding: number;
  readonly stopStart: number;
  readonly helped: number;
  /** Colder than the coldest row of its sheet, and not certain to need help. */
  readonly beyond: number;
};

/** The heating season by outdoor temperature, coldest first; bins are `width` K wide. */
export type Winter = { readonly bins: readonly WinterBin[]; readonly width: number; readonly lowestKnown: boolean };

export type Candidate = {
  readonly id: string;
  readonly name: string;
  readonly chosen: boolean;
  readonly unit: UnitModel;
  readonly blower: BlowerModel;
  /** W at the design night: highest speed, defrost and altitude counted, no backup. */
  readonly heatingCapacity: Outcome<Spread>;
  /** That less the load, W; negative is short. */
  readonly heatingSpare: Outcome<Spread>;
  /** W sensible and total at the design hour, highest speed. */
  readonly coolingSensible: Outcome<Spread>;
  readonly coolingSpare: Outcome<Spread>;
  /** Lowest outdoor temperature at which it still holds the house alone, °C. */
  readonly balancePoint: Outcome<number>;
  /** Hours of the year in which the house needs less than the lowest continuous capacity: it cycles. */
  readonly cyclingHours: Outcome<number>;
  readonly heatingHours: Outcome<number>;
  /** Hours in which the house needs more than it gives. */
  readonly helpedHours: Outcome<Range>;
  readonly winter: Outcome<Winter>;
  readonly seasons: {
    readonly own: Outcome<OwnSeason>;
    readonly usHeating: Published;
    readonly usCooling: Published;
    readonly europe: Published;
  };
  /** Coefficient of performance at the design night. */
  readonly designCop: Outcome<number>;
  /** Most power drawn at once with and without backup strips, W. */
  readonly powerMost: Outcome<Range>;
};

/** A candidate's place: whether it holds the cold night, and the share of heating hours it runs without stopping. */
export type Ranked = { readonly id: string; readonly holds?: boolean; readonly steadyShare?: number };

export type EquipmentResult = ResultBase & {
  readonly ranking: readonly Ranked[];
  readonly candidates: Readonly<Record<string, Candidate>>;
  /** The one the plan is made for: marked, or the only one. */
  readonly chosen: Outcome<string>;
};
