import type { Group } from '../coupling/asBuilt/system.ts';
import type { Balancing } from '../coupling/balancing/system.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { FlowsRead } from './balancing/flowsRead.ts';
import type { NextReading } from './causes/next.ts';
import type { Suspect } from './causes/posterior.ts';
import type { ResponseTable } from './causes/table.ts';
import type { Log } from './logs/result.ts';
import type { StartUp } from './startUp/result.ts';
import type { Verdict } from './verdict.ts';
import type { Taken, VisitState } from './visit.ts';
import type { Witnesses } from './witnesses.ts';

/** Why readings of a visit count for nothing: the unit was not in the state that they suit. */
export type Aside = 'young' | 'defrost';

/** The flows of a visit with what they lack, and what follows from them. */
export type VisitBalancing = { readonly read: FlowsRead; readonly found: Outcome<Balancing> };

/** What a reading should be in the state of a visit. */
export type Expected = {
  readonly id: string;
  readonly group: Group;
  readonly subject?: string;
  readonly value: number;
  readonly band: { readonly min: number; readonly max: number };
};

/** A reading held against what it should be; why it is set aside, where it cannot be. */
export type ReadingFound = {
  readonly id: string;
  readonly expected: string;
  readonly group?: Group;
  readonly value: number;
  /** Less the house's own draw, where that is known and was in it. */
  readonly net: number;
  readonly should?: number;
  readonly verdict?: Verdict;
  /** The verdict is that of its share of all registers. */
  readonly asShare?: true;
  readonly aside?: 'unknown' | 'unit' | 'contradicts';
  /** The unit in which it would fit, or the reading it cannot be true with. */
  readonly because?: string;
};

export type VisitFound = {
  readonly expected: readonly Expected[];
  readonly readings: readonly ReadingFound[];
  /** The likeliest, the chance of all others in `rest`. */
  readonly suspects: readonly Suspect[];
  readonly rest: number;
  /** Chance that nothing in the table of causes is wrong. */
  readonly sound: number;
  readonly involved: Readonly<Record<string, number>>;
  /** How many kinds of reading speak. */
  readonly kinds: number;
  readonly next: readonly NextReading[];
  /** Causes that this state cannot be run with. */
  readonly lost: readonly string[];
  readonly witnesses: Witnesses;
  readonly power?: PowerReading;
};

export type CommissioningResult = ResultBase & {
  readonly startUp: StartUp;
  readonly logs: readonly Log[];
  /** In the order of the document. */
  readonly visits: Readonly<Record<string, Visit>>;
  /** Readings that name no visit, or nothing to hold them against. */
  readonly loose: readonly { readonly id: string; readonly lacks: 'visit' | 'expected' | 'value' }[];
};

export type Visit = {
  readonly id: string;
  readonly name: string;
  readonly day?: string;
  readonly state: Outcome<VisitState>;
  readonly aside?: Aside;
  /** All doors were shut that get shut: rooms are read against the hall, and nothing else but the static pressure. */
  readonly doorsShut?: true;
  readonly filter: 'unknown' | 'clean' | 'used' | 'dirty' | 'wet';
  readonly strips: 'unknown' | 'off' | 'on';
  /** W the house draws without the unit, where it was read. */
  readonly houseBase?: number;
  readonly taken: readonly Taken[];
  /** Degrees from open of dampers that stood otherwise than drawn, by section. */
  readonly dampers: Readonly<Record<string, number>>;
  /** Which dampers to move by the registers’ flows; absent where fewer than two were read. */
  readonly balancing?: VisitBalancing;
  /** What every cause would show in its state; taken out where its readings have been told. */
  readonly responses?: ResponseTable;
  /** Pending until the responses of its state are known. */
  readonly found: Outcome<VisitFound>;
};

export type PowerReading = {
  readonly id: string;
  /** W: as read, what the unit should draw, and the reading less the house's draw where that is known. */
  readonly read: number;
  readonly expected: number;
  readonly net: number;
  /** W up to which the reading fits: the plan's own doubt and the method's. */
  readonly most: number;
  readonly verdict: 'explained' | 'suspicious' | 'cannot tell';
  readonly reasons: readonly PowerReason[];
  /** W that the house would have to draw without the unit for the reading to be right. */
  readonly gap: number;
  /** W at the speeds that were not entered. */
  readonly otherSpeeds: readonly number[];
};

/** What would make a power reading right. */
export type PowerReason = 'fits' | 'base' | 'base-unknown' | 'base-large' | 'strips' | 'speed' | 'nothing';
