import type { Project, ResolvedProject } from '@kneewall/project';
import type { Agreement } from '../coupling/agreement.ts';
import type { Season } from '../coupling/season/season.ts';
import type { Results } from '../jobs/job.ts';
import type { TradeResults } from '../results.ts';
import type { Finding } from './finding.ts';
import type { Draft, Judged, Words } from './judge.ts';
import type { Conditions, ExpectedReading, MaterialLine, Task } from './lines.ts';
import type { Printer } from './printer.ts';
import type { Sources } from './source.ts';
import type { Working } from './working.ts';

/** What a trade computes with: its part of the project, what is upstream, and finished jobs. */
export type TradeInput<Upstream extends keyof TradeResults = never> = {
  readonly project: ResolvedProject;
  readonly upstream: { readonly [K in Upstream]: TradeResults[K] };
  readonly results: Results;
};

/** Everything the judging stage may see. */
export type PlanView = {
  readonly project: ResolvedProject;
  readonly trades: Readonly<Partial<TradeResults>>;
  readonly agreement: Agreement;
  readonly season: Season;
};

/** What a judged trade hands in: drafts, and the workings that end in their values. */
export type Drafts = { readonly drafts: readonly Draft[]; readonly workings: Readonly<Record<string, Working>> };

/**
 * The half of a trade that finds: what it reads, its design, and what it holds against its limits. `design` is pure:
 * equal inputs, equal result. It may read only what `reads` and `after` name: the plan hands it nothing else, and redoes
 * it only when one of those changes.
 */
export type Finder<Id extends keyof TradeResults, Upstream extends keyof TradeResults = never> = {
  readonly id: Id;
  readonly phase: 'before' | 'agreed' | 'sum';
  /** Dotted document paths, each a group or map: `house`, `routes.ducts`. */
  readonly reads: readonly string[];
  readonly after: readonly Upstream[];
  /** Keys of the results (jobs, parsed blobs) it wants to see; none where this is absent. */
  readonly looksUp?: (project: Project) => readonly string[];
  design(input: TradeInput<Upstream>): TradeResults[Id];
  /**
   * What of the result hangs on more of the document than the design does: it is added to the design, which stands while
   * only that more changes. It may read what `reads` and `addsFrom` name.
   */
  add?(result: TradeResults[Id], input: TradeInput<Upstream>): TradeResults[Id];
  readonly addsFrom?: readonly string[];
  /**
   * Puts what finished jobs found into a result that asked for them; without it a trade's jobs are those it names in
   * `looksUp`. The design is not done again for it. Finished jobs are no longer wanted; others may be wanted instead.
   */
  learn?(result: TradeResults[Id], found: Results): TradeResults[Id];
  findings(result: TradeResults[Id], view: PlanView): Drafts;
  /**
   * What its findings and expected readings look at beside its own result: parts of the document, other trades, the
   * agreement where it says so, parts of the season. They are made again only when one of those changes.
   */
  readonly looksAt: {
    readonly reads: readonly string[];
    readonly trades: readonly (keyof TradeResults)[];
    readonly agreement?: true;
    readonly season?: readonly (keyof Season)[];
  };
};

/** What all trades of earlier phases said. */
export type Said = {
  readonly tasks: readonly Task[];
  readonly materials: readonly MaterialLine[];
  readonly findings: readonly Finding[];
};

/** The half of a trade that tells: words, lists and sources, which a page may fetch after the first counts are drawn. */
export type Teller<Id extends keyof TradeResults> = {
  readonly id: Id;
  readonly title: string;
  materials(result: TradeResults[Id]): readonly MaterialLine[];
  /** Ids of lines of other trades that its own stand in for. */
  standsFor?(result: TradeResults[Id]): readonly string[];
  tasks(result: TradeResults[Id]): readonly Task[];
  readings(result: TradeResults[Id], conditions: Conditions, view: PlanView): readonly ExpectedReading[];
  /** Of the phase `sum`: its result with what all other trades said, and the jobs that asks for; judged again then. */
  sum?(result: TradeResults[Id], said: Said): TradeResults[Id];
  /** What of that it listens to; it is summed up again only when one of these changed. Without it, to everything. */
  readonly hears?: readonly (keyof Said)[];
  /** Words for a finding, by the part of its id before the colon. */
  words(judged: Judged, print: Printer): Words;
  readonly sources: Sources;
};

/** One trade, one shape. */
export type Trade<Id extends keyof TradeResults, Upstream extends keyof TradeResults = never> = Finder<Id, Upstream> &
  Teller<Id>;
