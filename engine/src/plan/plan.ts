import type { Problem, TradeId } from '@kneewall/project';
import type { Agreement } from '../coupling/agreement.ts';
import type { Season } from '../coupling/season/season.ts';
import type { TradeResults } from '../results.ts';
import type { Finding, HoldPoint } from './finding.ts';
import type { ExpectedReading, MaterialLine, Task } from './lines.ts';
import type { Source } from './source.ts';
import type { Working } from './working.ts';

/** What stands against a hold point, harm first. */
export type HoldPointView = {
  readonly holdPoint: HoldPoint;
  /** Ids of findings, worst first. */
  readonly findings: readonly string[];
  readonly fails: number;
  readonly tight: number;
  readonly unknown: number;
  readonly ok: number;
};

/** All that the engine derives from a project. */
export type Plan = {
  readonly engine: { readonly version: string; readonly trades: readonly TradeId[] };
  readonly findings: readonly Finding[];
  readonly holdPoints: readonly HoldPointView[];
  readonly trades: Readonly<Partial<TradeResults>>;
  readonly materials: readonly MaterialLine[];
  readonly tasks: readonly Task[];
  readonly readings: readonly ExpectedReading[];
  readonly workings: Readonly<Record<string, Working>>;
  readonly agreement: Agreement;
  /** House, unit and ducts through a year, and what could be done to the house. */
  readonly season: Season;
  readonly sources: Readonly<Record<string, Source>>;
  readonly problems: readonly Problem[];
};
