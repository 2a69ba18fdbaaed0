import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Metal } from './wires/tables.ts';

/** A circuit from the panel or the inverter: to the outdoor unit, or to an air handler that has one of its own. */
export type RunId = 'outdoor' | 'handler';

/** What the nameplate asks of a circuit, A: wires carry `least` at least, protection is `most` at most. */
export type Rating = {
  readonly least: Range;
  readonly most: number;
  /** What flows at full speed; `ampacity` where only the least ampacity is known, which is more than ever flows. */
  readonly current: Range;
  readonly by: 'nameplate' | 'currents';
  readonly currentBy: 'currents' | 'ampacity';
};

/** A conductor: mm² and, where it is one, the gauge. `own`: the person means to use it; else the plan picked it. */
export type Conductor = { readonly area: number; readonly gauge?: number; readonly own: boolean };

/** V lost, as a share of the supply's voltage too. */
export type Drop = { readonly volts: Range; readonly share: Range };

/** `pipe`: m inside; `name` its trade size where the plan picked it. `count` conductors, the ground among them. */
export type Fill = {
  readonly share: number;
  readonly most: number;
  readonly count: number;
  readonly pipe: number;
  readonly name?: string;
};

export type Run = {
  readonly id: RunId;
  readonly metal: Metal;
  readonly laid: 'cable' | 'pipe' | 'outdoor';
  /** Of its breaker: 1 at 120 V, 2 at 240 V, 3 for three phases. */
  readonly poles: 1 | 2 | 3;
  readonly rating: Outcome<Rating>;
  /** °C of the hottest stretch. */
  readonly ambient: Outcome<Range>;
  readonly length: Outcome<Range>;
  readonly conductor: Outcome<Conductor>;
  /** A that it may carry where it lies. */
  readonly ampacity: Outcome<Range>;
  /** Share of its conduit that the conductors take, and the most they may; none where they lie in no conduit. */
  readonly fill?: Outcome<Fill>;
  /** A. */
  readonly protection: Outcome<{ readonly size: number; readonly own: boolean }>;
  readonly drop: Outcome<Drop>;
  /** V left at the unit while its compressor starts, as a share; none where it ramps up. */
  readonly starting?: Outcome<Range>;
  readonly ground: Outcome<Conductor>;
  /** A for which the disconnect has to be made, and the one to buy. */
  readonly disconnect: Outcome<{ readonly least: number; readonly size: number }>;
  /** m from the disconnect to the unit. */
  readonly sight: Outcome<number>;
};

/** The cable between the two units: what the maker asks for, and what it is to be. */
export type Between = {
  readonly wanted: Outcome<number>;
  readonly conductors: Outcome<number>;
  readonly length: Outcome<Range>;
  /** The maker's, m and mm². */
  readonly longest?: number;
  readonly size?: number;
  readonly screened: boolean;
};

export type CircuitResult = ResultBase & {
  readonly supply: 'grid' | 'own';
  /** V. */
  readonly voltage: number;
  /** The share of it that a circuit may lose. */
  readonly dropMost: number;
  readonly unit: Outcome<{ readonly id: string; readonly name: string }>;
  readonly runs: readonly Run[];
  readonly between?: Between;
  /** Between battery and inverter at its full power, A, and what its fuse has to carry at least; only on one’s own supply. */
  readonly battery?: Outcome<{ readonly current: number; readonly fuse: number }>;
  /** W; only on one’s own supply. What all draw in the worst second, and what the busier leg carries. */
  readonly surge?: Outcome<Range>;
  /** The same for every candidate, the unit chosen among them. */
  readonly starts?: Readonly<Record<string, Outcome<Range>>>;
  readonly leg?: Outcome<Range>;
  /** V of the unit, where the inverter gives one leg of 120 V only. */
  readonly output?: Outcome<number>;
  /** W asked of the generator while it charges and heats, and what it gives here; only where there is one. */
  readonly generator?: { readonly asked: Outcome<Range>; readonly gives: Outcome<number> };
};
