import type { Project } from '@kneewall/project';
import { noAgreement } from './coupling/agreement.ts';
import { noSeason } from './coupling/season/season.ts';
import { type Attempted, attempted } from './plan/attempted.ts';
import { type Judged, judge } from './plan/judge.ts';
import { type Memo, remembered } from './plan/memo.ts';
import { onlyParts, partsRead } from './plan/reads.ts';
import type { Finder, PlanView } from './plan/trade.ts';
import type { Working } from './plan/working.ts';
import type { TradeResults } from './results.ts';

export type Result = TradeResults[keyof TradeResults];

/** A finder with its own result type forgotten, for code that treats all of them alike. */
export type AnyFinder = Finder<keyof TradeResults, keyof TradeResults>;

/** What a trade holds against its limits, with the workings that end in the values. */
export type JudgedDrafts = {
  readonly result: Result;
  readonly judged: readonly Judged[];
  readonly workings: Readonly<Record<string, Working>>;
};

/** What a trade holds against its limits, judged again only when something moved that it looks at; `name` in the memo. */
export function judgeOne(
  finder: AnyFinder,
  designed: Attempted<Result>,
  project: Project,
  view: PlanView,
  memo: Memo,
  name = `judge:${finder.id}`,
): Attempted<JudgedDrafts> {
  if ('fault' in designed) return designed;
  const result = designed.value;
  return remembered(memo, name, [...seenBy(finder, project, view), result], () =>
    attempted(() => {
      const { drafts, workings } = finder.findings(result, onlySeen(finder, project, view, memo));
      return { result, judged: drafts.map(judge), workings };
    }),
  );
}

/** What a judged trade may look at; while none of it moves its findings and readings stand. */
export const seenBy = ({ looksAt }: AnyFinder, project: Project, view: PlanView): unknown[] => [
  ...partsRead(project, looksAt.reads),
  ...looksAt.trades.map((id) => view.trades[id]),
  looksAt.agreement ? view.agreement : undefined,
  ...(looksAt.season ?? []).map((part) => view.season[part]),
];

/** The view with everything taken out that a trade does not say it looks at, so that it cannot. */
export function onlySeen({ looksAt }: AnyFinder, project: Project, view: PlanView, memo: Memo): PlanView {
  const { reads, trades, agreement, season = [] } = looksAt;
  return {
    project: memo.resolve(onlyParts(project, reads)),
    trades: Object.fromEntries(trades.map((id) => [id, view.trades[id]])) as PlanView['trades'],
    agreement: agreement ? view.agreement : noAgreement,
    season: { ...noSeason, ...Object.fromEntries(season.map((part) => [part, view.season[part]])) },
  };
}
