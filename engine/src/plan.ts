import {
  inspectProject,
  type Problem,
  type Project,
  type ResolvedProject,
  resolveProject,
  type System,
} from '@kneewall/project';
import { agree } from './coupling/agree.ts';
import { type Agreement, noAgreement } from './coupling/agreement.ts';
import { noSeason, noSeasonJobs, seasonFrom, seasonJobs } from './coupling/season/season.ts';
import { couplingSources } from './coupling/sources.ts';
import type { Job } from './jobs/job.ts';
import { houseCase } from './loads/dynamic/houseCase.ts';
import { faultFinding, faultOf } from './plan/fault.ts';
import type { Finding } from './plan/finding.ts';
import { gatherByHoldPoint } from './plan/holdPoints.ts';
import { findingOf, judge } from './plan/judge.ts';
import { coldMemo, type Memo, remembered } from './plan/memo.ts';
import { attempt } from './plan/outcome.ts';
import type { Plan } from './plan/plan.ts';
import { printerFor } from './plan/printer.ts';
import { onlyParts, partsRead } from './plan/reads.ts';
import { scenario } from './plan/scenario.ts';
import type { Source } from './plan/source.ts';
import type { PlanView, ResultBase, Results } from './plan/trade.ts';
import type { Working } from './plan/working.ts';
import type { TradeResults } from './results.ts';
import { type AnyTrade, builtTrades, trades } from './trades.ts';
import { engineVersion } from './version.ts';

export type Evaluated = { readonly plan: Plan; readonly wanted: readonly Job[] };

export type EvaluateOptions = {
  /** In whose units the words are. Without it the project's own choice. */
  readonly units?: System;
  /** Keeps what did not change between evaluations. The answer never depends on it. */
  readonly memo?: Memo;
};

type Found = { readonly result?: TradeResults[keyof TradeResults]; readonly fault?: string };

/**
 * All that follows from a project and the results at hand, and the jobs that would tell more. Pure: equal inputs give
 * equal plans, to the bit. A fault in one trade blinds that trade only and is never taken for `ok`.
 */
export function evaluate(project: Project, results: Results, options: EvaluateOptions = {}): Evaluated {
  const memo = options.memo ?? coldMemo();
  const found = designAll(project, results, memo);
  const good = Object.fromEntries(
    Object.entries(found).flatMap(([id, f]) => (f.result ? [[id, f.result]] : [])),
  ) as Partial<TradeResults>;
  const resolved = remembered(memo, 'resolved', [project], () => resolveProject(project));
  const agreement = agreed(project, resolved, good, memo);
  const { season, wanted } = throughYear(project, resolved, good, results, memo);
  const view: PlanView = { project: resolved, trades: good, agreement, season };
  const units = options.units ?? (project.site?.units === 'si' ? 'si' : 'us');
  const judged = trades.map((t) => judgeTrade(t, found[t.id] ?? {}, project, view, units, memo));
  const findings = judged.flatMap((j) => j.findings);
  const base = Object.values(good) as ResultBase[];
  const plan: Plan = {
    engine: { version: engineVersion, trades: builtTrades },
    findings,
    holdPoints: gatherByHoldPoint(findings),
    trades: good,
    materials: judged.flatMap((j) => j.materials),
    tasks: judged.flatMap((j) => j.tasks),
    readings: judged.flatMap((j) => j.readings),
    workings: Object.assign({}, ...base.map((r) => r.workings), ...judged.map((j) => j.workings)),
    agreement,
    season,
    sources: allSources(),
    problems: remembered(memo, 'problems', [project], () => inspectProject(project)) as readonly Problem[],
  };
  return { plan, wanted: [...base.flatMap((r) => r.wanted), ...wanted] };
}

function designAll(project: Project, results: Results, memo: Memo): Partial<Record<keyof TradeResults, Found>> {
  const found: Partial<Record<keyof TradeResults, Found>> = {};
  for (const trade of trades) {
    const upstream = trade.after.map((id) => found[id]);
    const blind = upstream.find((u) => u?.fault !== undefined);
    const seen = resultsSeen(trade, project, results);
    const inputs = [...partsRead(project, trade.reads), ...upstream.map((u) => u?.result), ...Object.values(seen)];
    const designed = blind?.fault
      ? { fault: blind.fault }
      : remembered(memo, trade.id, inputs, () => designOne(trade, project, found, seen));
    found[trade.id] = learned(trade, designed, results, memo);
  }
  return found;
}

/** A designed trade with what its finished jobs found; what it then wants may be finished too. */
function learned(trade: AnyTrade, designed: Found, results: Results, memo: Memo, turn = 0): Found {
  const { result } = designed;
  if (!result || !trade.learn) return designed;
  const finished = result.wanted.filter((job) => job.key in results);
  if (finished.length === 0) return designed;
  const inputs = [result, ...finished.map((job) => results[job.key])];
  const known = remembered(memo, `learn:${trade.id}:${turn}`, inputs, (): Found => {
    try {
      return { result: trade.learn?.(result, results) ?? result };
    } catch (thrown) {
      return { fault: faultOf(thrown) };
    }
  });
  return learned(trade, known, results, memo, turn + 1);
}

/** The results a trade named, and no others. */
const resultsSeen = (trade: AnyTrade, project: Project, results: Results): Results =>
  Object.fromEntries((trade.looksUp?.(project) ?? []).map((key) => [key, results[key]]));

function designOne(
  trade: AnyTrade,
  project: Project,
  found: Partial<Record<keyof TradeResults, Found>>,
  results: Results,
): Found {
  const upstream = Object.fromEntries(trade.after.map((id) => [id, found[id]?.result])) as TradeResults;
  try {
    return { result: trade.design({ project: resolveProject(onlyParts(project, trade.reads)), upstream, results }) };
  } catch (thrown) {
    return { fault: faultOf(thrown) };
  }
}

function agreed(project: Project, resolved: ResolvedProject, good: Partial<TradeResults>, memo: Memo): Agreement {
  const { climate, loads, equipment, air } = good;
  if (!climate || !loads || !equipment || !air) return noAgreement;
  const { of } = scenario();
  const { heating, cooling, humidity } = resolved.house.setpoints;
  return remembered(memo, 'agreement', [climate, loads, equipment, air, project.house?.setpoints], () =>
    agree({ climate, loads, equipment, air }, { heating: of(heating), cooling: of(cooling), humidity: of(humidity) }),
  );
}

/** House, unit and ducts through a year: what finished jobs found of it, and what is still wanted. */
function throughYear(
  project: Project,
  resolved: ResolvedProject,
  good: Partial<TradeResults>,
  results: Results,
  memo: Memo,
): ReturnType<typeof seasonFrom> {
  const { climate, equipment, air, offgrid } = good;
  if (!climate) return seasonFrom(noSeasonJobs, results);
  const read = [project.house, project.site, climate, equipment, air, offgrid];
  const jobs = remembered(memo, 'season jobs', read, () => {
    try {
      const house = remembered(memo, 'house case', [project.house, project.site, climate], () =>
        attempt(() => houseCase(resolved, climate)),
      );
      return seasonJobs(resolved, good, house, memo.plain);
    } catch {
      // Whatever goes wrong here has blinded the house's own trade too, which says so.
      return noSeasonJobs;
    }
  });
  const seen = Object.values(jobs).map((job) => (job.ok ? results[job.value.key] : undefined));
  return remembered(memo, 'season', [jobs, ...seen], () => seasonFrom(jobs, results));
}

type JudgedTrade = {
  readonly findings: readonly Finding[];
  readonly workings: Readonly<Record<string, Working>>;
  readonly materials: Plan['materials'];
  readonly tasks: Plan['tasks'];
  readonly readings: Plan['readings'];
};

function judgeTrade(
  trade: AnyTrade,
  found: Found,
  project: Project,
  view: PlanView,
  units: System,
  memo: Memo,
): JudgedTrade {
  const blind = (fault: string): JudgedTrade => ({
    findings: [faultFinding(trade.id, fault)],
    workings: {},
    materials: [],
    tasks: [],
    readings: [],
  });
  const { result } = found;
  if (!result) return blind(found.fault ?? 'no result');
  const seen = [...seenBy(trade, project, view), result, units];
  const guarded = <T>(name: string, inputs: readonly unknown[], compute: () => T): T | JudgedTrade =>
    remembered(memo, `${name}:${trade.id}`, inputs, () => {
      try {
        return compute();
      } catch (thrown) {
        return blind(faultOf(thrown));
      }
    });
  const judged = guarded('judge', seen, () => {
    const { drafts, workings } = trade.findings(result, onlyView(trade, project, view));
    const print = printerFor(units);
    const findings = drafts.map(judge).map((j) => findingOf(trade.id, j, trade.words(j, print)));
    return { findings, workings, materials: trade.materials(result), tasks: trade.tasks(result), readings: [] };
  });
  const conditions = conditionsOf(view);
  if (!conditions) return judged;
  const expected = guarded('readings', [...seen, view.agreement], () => trade.readings(result, conditions, view));
  return 'findings' in expected ? expected : { ...judged, readings: expected };
}

/** What a judged trade may look at; while none of it moves its words stand. */
const seenBy = ({ looksAt }: AnyTrade, project: Project, view: PlanView): unknown[] =>
  looksAt
    ? [...partsRead(project, looksAt.reads), ...looksAt.trades.map((id) => view.trades[id])]
    : [view.project, ...Object.values(view.trades), view.agreement, view.season];

/** The view with everything taken out that a trade does not say it looks at, so that it cannot. */
function onlyView({ looksAt }: AnyTrade, project: Project, view: PlanView): PlanView {
  if (!looksAt) return view;
  return {
    project: resolveProject(onlyParts(project, looksAt.reads)),
    trades: Object.fromEntries(looksAt.trades.map((id) => [id, view.trades[id]])) as PlanView['trades'],
    agreement: noAgreement,
    season: noSeason,
  };
}

/** The state that readings are expected for. */
const conditionsOf = ({ agreement }: PlanView) => agreement.heating ?? agreement.cooling;

const allSources = (): Readonly<Record<string, Source>> =>
  Object.assign({}, couplingSources, ...trades.map((t) => t.sources));
