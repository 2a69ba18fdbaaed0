import { inIdOrder, inOrder, type ResolvedProject } from '@kneewall/project';
import { attempt, unresolved } from '../plan/outcome.ts';
import type { TradeInput } from '../plan/trade.ts';
import { choiceOf, dayNumber, papersOf } from './papers.ts';
import { questionsOf } from './questions.ts';
import { quoteRows } from './quotes.ts';
import type { PaperKind, PaperworkResult, WorkDays } from './result.ts';
import { incentiveTerms, warrantyTerms } from './terms.ts';
import { awaitedOf, orderDay } from './waits.ts';
import { handsOf, worksOf } from './works.ts';

/** The papers in order, what they keep for licensed people, their terms against the plan, and quotes at one scope. Pure. */
export function design({ project }: TradeInput): PaperworkResult {
  const papers = papersOf(project);
  const hands = handsOf(project);
  const works = worksOf(project, papers, hands);
  const unit = chosenUnit(project);
  const of = (kind: PaperKind) => papers.filter((p) => p.kind === kind);
  return {
    papers,
    works,
    warranties: Object.fromEntries(of('warranty').map((p) => [p.id, warrantyTerms(project, p, hands)])),
    incentives: Object.fromEntries(of('incentive').map((p) => [p.id, incentiveTerms(project, p, hands, unit)])),
    insurances: Object.fromEntries(
      of('insurance').map((p) => {
        const tell = project.paperwork[p.id]?.insurance.tell;
        return [p.id, tell ? choiceOf(tell, 'unknown') : 'unknown'];
      }),
    ),
    quotes: quoteRows(project, unit),
    questions: questionsOf(project, papers, works),
    days: attempt(() => workDays(project)),
    unit: unitState(project),
    registers: Object.fromEntries(
      of('warranty').flatMap((p) => {
        const days = project.paperwork[p.id]?.warranty.register;
        return days && !('missing' in days) ? [[p.id, days.likely]] : [];
      }),
    ),
    awaited: awaitedOf(papers),
    orderDay: attempt(() => orderDay(project)),
    workings: {},
    wanted: [],
  };
}

/** The unit the plan is made for: marked, or the only one. */
function chosenUnit({ candidates }: ResolvedProject): string | undefined {
  const all = inIdOrder(candidates);
  return (all.find(([, c]) => c.chosen) ?? (all.length === 1 ? all[0] : undefined))?.[0];
}

const far = { ordered: 1, arrived: 1, fitted: 2 } as const;

/** How far the thing has come that stands for a candidate. */
function unitState({ items }: ResolvedProject): PaperworkResult['unit'] {
  const states = inOrder(items).flatMap(([, x]) =>
    x.of?.startsWith('candidates.') ? [far[choiceOf(x.state, 'idea') as keyof typeof far] ?? 0] : [],
  );
  return (['open', 'ordered', 'fitted'] as const)[Math.max(0, ...states)] ?? 'open';
}

/** The first day of a window, and the last on which work may end: the one entered, else that of the last window. */
function workDays({ work }: ResolvedProject): WorkDays {
  const days = inOrder(work.windows)
    .flatMap(([, w]) => (w.day !== undefined && dayNumber(w.day) !== undefined ? [w.day] : []))
    .sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return unresolved('missing', 'work.windows');
  const { doneBy } = work.dates;
  return { first, last: doneBy !== undefined && dayNumber(doneBy) !== undefined ? doneBy : last };
}
