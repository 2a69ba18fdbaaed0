import type { Range } from '@kneewall/project';
import type { HouseYear } from '../coupling/houseYear/answers.ts';
import type { Envelope } from '../physics/infiltration/index.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Spread } from '../plan/scenario.ts';
import type { AtticModel } from './attic.ts';
import type { DesignDays } from './dynamic/daysJob.ts';
import type { Study } from './dynamic/study.ts';
import type { Totals } from './dynamic/studyJob.ts';
import type { PartId } from './element.ts';
import type { LeakFace } from './house.ts';

/** One part of a load, W, positive when it makes the unit work. `subject` is the surface or opening, where it is one. */
export type LoadPart = { readonly part: PartId; readonly subject?: string; readonly heat: number };

export type RoomLoad = {
  readonly room: string;
  readonly name: string;
  /** W at the design night. */
  readonly heating: Outcome<Spread>;
  /** W sensible, at the hour at which the house as a whole needs most. */
  readonly cooling: Outcome<Spread>;
  readonly heatingParts: readonly LoadPart[];
  readonly coolingParts: readonly LoadPart[];
};

export type CoolingLoad = {
  /** W, at the peak hour. */
  readonly sensible: Spread;
  readonly latent: Spread;
  /** Local solar hour of the peak, 0.5 to 23.5. */
  readonly hour: number;
};

/** What last winter's fuel adds to the house as entered: a second witness of the loss for each degree. */
export type Narrowed = {
  readonly by: 'fuel';
  /** `contradicts`: next to nothing satisfies both, so nothing is narrowed. `adds-nothing`: the fuel is known too roughly. */
  readonly verdict: 'narrows' | 'adds-nothing' | 'contradicts';
  /** 1 where both say the same, 0 where nothing satisfies both. */
  readonly overlap: number;
  /** What the fuel alone says: W/K, and W at the design night. */
  readonly fuel: { readonly lossPerDegree: Spread; readonly heating: Spread };
  /** Both together, W/K and W; the house's own where nothing is narrowed. */
  readonly lossPerDegree: Spread;
  readonly heating: Spread;
};

/** How the house leaks under pressure: Q = c pⁿ, m³/(s Paⁿ), each room's share of c, and which way a room's walls face. */
export type HouseLeaks = {
  readonly coefficient: Spread;
  readonly exponent: number;
  readonly shares: Readonly<Record<string, number>>;
  readonly faces: Readonly<Record<string, readonly LeakFace[]>>;
};

/** What was taken from a log: how many times its own loss the house has, and what the plan says without it. */
export type LearnedHouse = {
  /** Name of the log, its first and last day, and the day it was taken in; empty where nobody said. */
  readonly log: string;
  readonly from: string;
  readonly to: string;
  readonly accepted: string;
  readonly times: Range;
  /** W/K as the log has it, at its own weather. */
  readonly told?: Range;
  readonly own: { readonly heating: Outcome<Spread>; readonly lossPerDegree: Outcome<Spread> };
  /** Paths of what decides the loss and is marked measured. */
  readonly measured: readonly string[];
};

/** °C of the attic's air in an hour of the hot day, and K by which the sun lifts its roof above outdoors. */
export type AtticHour = { readonly air: number; readonly sunRise: number };

export type LoadsResult = ResultBase & {
  /** `rooms`: room by room. `quick`: the whole house from a handful of answers. */
  readonly basis: 'rooms' | 'quick';
  /** W at the design night, the whole house: by the days once they are known, else by sums of steady parts. */
  readonly heating: Outcome<Spread>;
  readonly cooling: Outcome<CoolingLoad>;
  /** What the steady sums said, W, where the days have taken their place. */
  readonly sums?: Outcome<{ readonly heating: number; readonly cooling: number }>;
  readonly rooms: Readonly<Record<string, RoomLoad>>;
  /** The whole house by part, largest first. */
  readonly heatingParts: readonly LoadPart[];
  readonly coolingParts: readonly LoadPart[];
  /**
   * W/K of shell and leaks at the design night: its degrees and its wind, ducts apart. In milder air a house leaks less, and the
   * ground does not follow the day: what a log shows is lower, and is held against the plan in the log's own weather.
   */
  readonly lossPerDegree: Outcome<Spread>;
  /** Outdoor temperature above which no heat is needed, °C. */
  readonly balanceTemperature: Outcome<number>;
  readonly leaks: Outcome<HouseLeaks>;
  readonly attic: Outcome<AtticModel>;
  /** How the house leaks. */
  readonly leakage: Outcome<Envelope>;
  /**
   * °C in the attic without ducts: at the design night, and in its own hottest hour of the hot day, by the days once they are
   * known; and that day hour by hour, as likely as it is known.
   */
  readonly atticNight: Outcome<Spread>;
  readonly atticDay: Outcome<Spread>;
  readonly atticHours: Outcome<readonly AtticHour[]>;
  /** Of its hottest hour. */
  readonly atticSunRise: Outcome<number>;
  /** The cold night and the hot day through the house's own walls, and a whole year; pending until their jobs are done. */
  readonly days: Outcome<DesignDays>;
  readonly year: Outcome<HouseYear>;
  /** The loads of many houses, each as this one may be; pending until somebody asks for it. */
  readonly study: Outcome<Study>;
  /** What each of its first unknowns has a hand in, alone and with others. */
  readonly totals: Outcome<Totals>;
  /** kWh over last winter by fuel burned, and by the house as entered; only where fuel is known. */
  readonly winter: Outcome<{ readonly burned: Spread; readonly computed: Spread }>;
  /** The heat need with last winter's fuel heard; only where fuel is known. Candidates are judged on `heating`. */
  readonly narrowed: Outcome<Narrowed>;
  /** Only where something was taken from a log: all of the above is scaled by it. */
  readonly learned?: LearnedHouse;
};
