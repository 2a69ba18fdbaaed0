import type { Range, ResolvedProject } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Trap } from './kernels/trap.ts';

export type Drain = ResolvedProject['routes']['drain'];
export type Place = 'inside' | 'attic' | 'below' | 'outdoors';

/**
 * A winter at one place: hours below 0 °C and the longest without a break, the lowest °C, the hour of the year in which the
 * hardest stretch begins, and the share of standing water that is ice at the end of the hardest one.
 */
export type Winter = {
  readonly hours: number;
  readonly longest: number;
  readonly lowest: number;
  readonly ice: number;
  readonly from?: number;
};

/** How standing water meets cold air: the coldest that is met, °C, and, where that freezes, s until it is at 0 °C and solid. */
export type Frost = {
  readonly air: number;
  readonly cold?: number;
  readonly solid?: number;
  readonly winter?: Winter;
  /** Names of stretches that do not fall, so that water stands in them too. */
  readonly standing: readonly string[];
};

/** A stretch of the drain, m; `falls` by the least slope. `id` is empty where the drain is not entered in stretches. */
export type Stretch = {
  readonly id: string;
  readonly name: string;
  readonly place: Place;
  readonly run: number;
  readonly fall: number;
  readonly least: number;
  readonly falls: boolean;
  /** m of foam round it. */
  readonly foam: number;
  readonly winter?: Winter;
};

/** Litres an hour that the pump lifts, m of lift and of what it can, W. */
export type Pumped = {
  readonly litres: number;
  readonly lift: number;
  readonly headMost: number;
  readonly power: number;
};

/** m of risers that the trap, the fall and the pan's rim each ask for, and the most of them. */
export type Risers = { readonly trap: number; readonly fall: number; readonly rim: number; readonly least: number };

/** m of the second outlet's or the pan's line. */
export type SecondLine = { readonly run: number; readonly fall: number; readonly least: number };

/** Litres by month, in the year, and in the worst hour. */
export type WaterYear = { readonly months: readonly number[]; readonly year: number; readonly hourMost: number };

/** What is bought along it: m of pipe and of its fall, m inside, what catches the water when it stops, m of foam round the trap. */
export type Along = {
  readonly run: number;
  readonly fall: number;
  readonly pump: boolean;
  readonly float: boolean;
  readonly size: number;
  readonly second?: 'pan' | 'overflow' | 'switch' | 'none';
  readonly insulation: number;
};

export type CondensateResult = ResultBase & {
  /** Whether the cabinet sucks or presses where the drain leaves. */
  readonly pulls: boolean;
  /** Litres an hour at full speed, as its data sheet wrings water out of the air. */
  readonly water: Outcome<Range>;
  /** Pa at the drain's outlet at the most: a loaded filter and a wet coil counted; suction or pressure, above 0. */
  readonly pressure: Outcome<Range>;
  /** The trap for the largest of it, and the height that it takes with its pipe, m. */
  readonly trap: Outcome<Trap>;
  readonly room: Outcome<number>;
  /** m that the drain must lose along its way, at the least. */
  readonly fallLeast: Outcome<number>;
  /** Share of what the pipe carries half full, at the fall it has. */
  readonly filled: Outcome<Range>;
  /** s until the pan runs over with its drain stopped. */
  readonly panTime: Outcome<number>;
  readonly frost: Outcome<Frost>;
  readonly stretches: Outcome<readonly Stretch[]>;
  readonly risers: Outcome<Risers>;
  readonly secondLine: Outcome<SecondLine>;
  /** Only where the project says that there is one. */
  readonly pumped?: Outcome<Pumped>;
  /** What the house's drying comes to through its year, at the coil that keeps its humidity; pending until that is known. */
  readonly waterYear: Outcome<WaterYear>;
  readonly along: Outcome<Along>;
};
