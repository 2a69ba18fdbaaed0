import type { Project, ResolvedProject } from '@kneewall/project';
import { agree } from './coupling/agree.ts';
import { type Agreement, noAgreement } from './coupling/agreement.ts';
import type { lifeCost } from './coupling/lifeCost/lifeCost.ts';
import {
  noSeason,
  noSeasonJobs,
  type Season,
  type SeasonFound,
  seasonFrom,
  seasonJobs,
} from './coupling/season/season.ts';
import type { Job, Results } from './jobs/job.ts';
import { type AnyFinder, type JudgedDrafts, judgeOne, type Result } from './judgeOne.ts';
import { houseCase } from './loads/dynamic/houseCase.ts';
import { type Attempted, attempted } from './plan/attempted.ts';
import { faultMark } from './plan/fault.ts';
import { type Mark, markOf } from './plan/mark.ts';
import { type Memo, remembered } from './plan/memo.ts';
import { attempt } from './plan/outcome.ts';
import { onlyParts, partsRead } from './plan/reads.ts';
import type { ResultBase } from './plan/resultBase.ts';
import { scenario } from './plan/scenario.ts';
import type { PlanView } from './plan/trade.ts';
import type { TradeResults } from './results.ts';

/** What it is found with: trades in the order in which they need each other, and what candidates cost over their lives. */
export type FoundWith = { readonly finders: readonly AnyFinder[]; readonly lifeCost?: typeof lifeCost };

/** Everything a plan is made of before there are words for it. */
export type Found = {
  readonly project: Project;
  readonly view: PlanView;
  /** In the order of the trades. */
  readonly trades: readonly { readonly id: keyof TradeResults; readonly found: Attempted<JudgedDrafts> }[];
  readonly wanted: readonly Job[];
};

type Designs = Partial<Record<keyof TradeResults, Attempted<Result>>>;

/** All that these trades find in a project with the results at hand. A fault in one trade blinds that trade only. */
export function findAll(project: Project, results: Results, memo: Memo, { finders, lifeCost }: FoundWith): Found {
  const designs = designAll(finders, project, results, memo);
  const good = Object.fromEntries(
    Object.entries(designs).flatMap(([id, d]) => ('value' in d ? [[id, d.value]] : [])),
  ) as Partial<TradeResults>;
  const resolved = remembered(memo, 'resolved', [project], () => memo.resolve(project));
  const agreement = agreed(project, resolved, good, memo);
  const { season: run, wanted } = throughYear(project, resolved, good, results, memo);
  const season = lifeCost ? withLife(lifeCost, project, resolved, good, run, memo) : { ...noSeason, ...run };
  const view: PlanView = { project: resolved, trades: good, agreement, season };
  const base = Object.values(good) as ResultBase[];
  return {
    project,
    view,
    trades: finders.map((f) => ({
      id: f.id,
      found: judgeOne(f, designs[f.id] ?? { fault: 'no result' }, project, view, memo),
    })),
    wanted: [...base.flatMap((r) => r.wanted), ...wanted],
  };
}

/** Which findings there are and how each stands, in the order of the plan. */
export const marksOf = ({ trades }: Found): Mark[] =>
  trades.flatMap(({ id, found }) =>
    'fault' in found ? [faultMark(id)] : found.value.judged.map((judged) => markOf(id, judged)),
  );

function designAll(finders: readonly AnyFinder[], project: Project, results: Results, memo: Memo): Designs {
  const designs: Designs = {};
  for (const finder of finders) {
    const blind = finder.after.map((id) => designs[id]).find((u) => u && 'fault' in u);
    designs[finder.id] = blind ?? learned(finder, designOne(finder, project, designs, results, memo), results, memo);
  }
  return designs;
}

/** A designed trade with what its finished jobs found; what it then wants may be finished too. */
export function learned(
  finder: AnyFinder,
  designed: Attempted<Result>,
  results: Results,
  memo: Memo,
  turn = 0,
): Attempted<Result> {
  if ('fault' in designed || !finder.learn) return designed;
  const result = designed.value;
  const finished = result.wanted.filter((job) => job.key in results);
  if (finished.length === 0) return designed;
  const inputs = [result, ...finished.map((job) => results[job.key])];
  const known = remembered(memo, `learn:${finder.id}:${turn}`, inputs, () =>
    attempted(() => finder.learn?.(result, results) ?? result),
  );
  return learned(finder, known, results, memo, turn + 1);
}

/** The results a trade named, and no others. */
const resultsSeen = (finder: AnyFinder, project: Project, results: Results): Results =>
  Object.fromEntries((finder.looksUp?.(project) ?? []).map((key) => [key, results[key]]));

/** A trade's design and what it adds to it, each done again only when something changed that it reads. */
function designOne(
  finder: AnyFinder,
  project: Project,
  designs: Designs,
  results: Results,
  memo: Memo,
): Attempted<Result> {
  const upstream = Object.fromEntries(
    finder.after.map((id) => {
      const design = designs[id];
      return [id, design && 'value' in design ? design.value : undefined];
    }),
  ) as TradeResults;
  const seen = resultsSeen(finder, project, results);
  const inputs = [...partsRead(project, finder.reads), ...Object.values(upstream), ...Object.values(seen)];
  const input = (reads: readonly string[]) => ({
    project: memo.resolve(onlyParts(project, reads)),
    upstream,
    results: seen,
  });
  const designed = remembered(memo, finder.id, inputs, () => attempted(() => finder.design(input(finder.reads))));
  if ('fault' in designed || !finder.add) return designed;
  const { addsFrom = [] } = finder;
  const parts = partsRead(project, [...finder.reads, ...addsFrom]);
  return remembered(memo, `add:${finder.id}`, [designed, ...parts, ...Object.values(upstream)], () =>
    attempted(() => finder.add?.(designed.value, input([...finder.reads, ...addsFrom])) ?? designed.value),
  );
}

function agreed(project: Project, resolved: ResolvedProject, good: Partial<TradeResults>, memo: Memo): Agreement {
  const { climate, loads, equipment, air } = good;
  if (!climate || !loads || !equipment || !air) return noAgreement;
  const { of } = scenario();
  const { heating, cooling, humidity } = resolved.house.setpoints;
  return remembered(memo, 'agreement', [climate, loads, equipment, air.model, project.house?.setpoints], () =>
    agree(
      { climate, loads, equipment, ducts: air.model },
      { heating: of(heating), cooling: of(cooling), humidity: of(humidity) },
    ),
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
  const { climate, equipment, air, offgrid, commissioning } = good;
  if (!climate) return seasonFrom(noSeasonJobs, results);
  const { house, site, candidates, power } = project;
  const told = commissioning?.logs.flatMap(({ learned }) => (learned.ok ? [learned.value] : [])) ?? [];
  const ducts = [air?.model, air?.flows, air?.sizing];
  const read = [house, site, candidates, power, climate, equipment, ...ducts, offgrid, ...told];
  const jobs = remembered(memo, 'season jobs', read, () => {
    try {
      const inWeather = remembered(memo, 'house case', [house, site, climate], () =>
        attempt(() => houseCase(resolved, climate)),
      );
      return seasonJobs(resolved, good, inWeather, memo.plain);
    } catch {
      // Whatever goes wrong here has blinded the house's own trade too, which says so.
      return noSeasonJobs;
    }
  });
  const seen = Object.values(jobs).map((job) => (job.ok ? results[job.value.key] : undefined));
  return remembered(memo, 'season', [jobs, ...seen], () => {
    const { season, wanted } = seasonFrom(jobs, results);
    const parts = Object.entries(season).map(([name, part]) => [
      name,
      remembered(memo, `season:${name}`, [part], () => part),
    ]);
    return { season: Object.fromEntries(parts) as SeasonFound, wanted };
  });
}

/** The season with what each candidate costs over its life. A fault there leaves all else standing. */
function withLife(
  costs: typeof lifeCost,
  project: Project,
  resolved: ResolvedProject,
  good: Partial<TradeResults>,
  season: SeasonFound,
  memo: Memo,
): Season {
  const { equipment, offgrid, circuit, loads } = good;
  const { candidates, power, items, work, paperwork } = project;
  const read = [season, equipment, offgrid, circuit, loads, candidates, power, items, work, paperwork];
  return remembered(memo, 'life cost', read, () => {
    const found = attempted(() => costs({ project: resolved, trades: good, season }));
    return { ...season, lifeCost: 'value' in found ? found.value : noSeason.lifeCost };
  });
}
