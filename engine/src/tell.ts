import { inspectProject, type Problem, type System } from '@kneewall/project';
import { couplingSources } from './coupling/sources.ts';
import { type Found, type JudgedDrafts, judgeOne, learned } from './find.ts';
import { builtTrades, finders } from './finders.ts';
import { type Attempted, attempted } from './plan/attempted.ts';
import { faultFinding } from './plan/fault.ts';
import type { Finding } from './plan/finding.ts';
import { gatherByHoldPoint } from './plan/holdPoints.ts';
import { findingOf } from './plan/judge.ts';
import { type Memo, remembered } from './plan/memo.ts';
import type { Plan } from './plan/plan.ts';
import { printerFor } from './plan/printer.ts';
import type { Source } from './plan/source.ts';
import type { PlanView, ResultBase, Results, Said } from './plan/trade.ts';
import type { Evaluated } from './plan.ts';
import { type AnyTeller, tellers } from './tellers.ts';
import { engineVersion } from './version.ts';

/** What one trade says. */
type Told = {
  readonly findings: readonly Finding[];
  readonly workings: JudgedDrafts['workings'];
  readonly materials: Plan['materials'];
  /** Lines of other trades that these stand in for. */
  readonly standsFor: readonly string[];
  readonly tasks: Plan['tasks'];
  readonly readings: Plan['readings'];
};

/** The plan of what was found, in the words and units of a person. A trade that cannot say what it found is blind. */
export function tellAll(found: Found, results: Results, units: System, memo: Memo): Evaluated {
  const tell = ({ id, found }: Found['trades'][number], view: PlanView): Told => {
    const tale = tellOne(tellers[id], found, view, units, memo);
    return 'value' in tale ? tale.value : blind(id, tale.fault);
  };
  const first = new Map(found.trades.flatMap((t) => (tellers[t.id].sum ? [] : [[t.id, tell(t, found.view)] as const])));
  const { view, trades, wanted } = summedUp(found, [...first.values()], results, memo);
  const told = trades.map((t) => first.get(t.id) ?? tell(t, view));
  return { plan: planOf(found.project, view, told, memo), wanted };
}

function planOf(project: Found['project'], view: PlanView, told: readonly Told[], memo: Memo): Plan {
  const findings = told.flatMap((t) => t.findings);
  const base = Object.values(view.trades) as ResultBase[];
  return {
    engine: { version: engineVersion, trades: builtTrades },
    findings,
    holdPoints: gatherByHoldPoint(findings),
    trades: view.trades,
    materials: standing(told),
    tasks: told.flatMap((t) => t.tasks),
    readings: told.flatMap((t) => t.readings),
    workings: Object.assign({}, ...base.map((r) => r.workings), ...told.map((t) => t.workings)),
    agreement: view.agreement,
    season: view.season,
    sources: allSources,
    problems: remembered(memo, 'problems', [project], () => inspectProject(project)) as readonly Problem[],
  };
}

/** What all trades need, without the lines for which another trade knows more: each thing is said once. */
function standing(told: readonly Told[]): Plan['materials'] {
  const replaced = new Set(told.flatMap((t) => t.standsFor));
  return told.flatMap((t) => t.materials.filter((l) => !replaced.has(l.id)));
}

/** What was found, with the results of those trades that sum up what all others said: asked, learned and judged again. */
function summedUp(found: Found, told: readonly Told[], results: Results, memo: Memo): Found {
  const { project } = found;
  let { view, trades, wanted } = found;
  const own = ownTasks(found, memo);
  const said = [...told.flatMap((t) => [t.tasks, t.materials, t.findings]), ...own];
  const all = (): Said => ({
    tasks: [...told.flatMap((t) => t.tasks), ...own.flat()],
    materials: told.flatMap((t) => t.materials),
    findings: told.flatMap((t) => t.findings),
  });
  found.trades.forEach(({ id, found: own }, at) => {
    const { sum } = tellers[id];
    const finder = finders.find((f) => f.id === id);
    if (!sum || !finder || 'fault' in own) return;
    const sums = remembered(memo, `sum:${id}`, [own.value.result, ...said], () =>
      attempted(() => sum(own.value.result, all())),
    );
    const summed = learned(finder, sums, results, memo);
    if ('value' in summed) {
      view = { ...view, trades: { ...view.trades, [id]: summed.value } };
      const asked = new Set(wanted.map((j) => j.key));
      wanted = [...wanted, ...summed.value.wanted.filter((j) => !asked.has(j.key))];
    }
    trades = trades.with(at, { id, found: judgeOne(finder, summed, project, view, memo) });
  });
  return { project, view, trades, wanted };
}

/** Tasks of the trades that sum up: they hang on what each found, not on the sum, and are planned with all others. */
const ownTasks = ({ trades }: Found, memo: Memo): readonly Plan['tasks'][] =>
  trades.flatMap(({ id, found }) => {
    if (!tellers[id].sum || 'fault' in found) return [];
    const { result } = found.value;
    const tasks = remembered(memo, `own-tasks:${id}`, [result], () => attempted(() => tellers[id].tasks(result)));
    return 'value' in tasks ? [tasks.value] : [];
  });

function tellOne(
  teller: AnyTeller,
  found: Attempted<JudgedDrafts>,
  view: PlanView,
  units: System,
  memo: Memo,
): Attempted<Told> {
  if ('fault' in found) return found;
  const { result, judged, workings } = found.value;
  const told = remembered(memo, `tell:${teller.id}`, [found.value, units], () =>
    attempted((): Told => {
      const print = printerFor(units);
      const findings = judged.map((j) => findingOf(teller.id, j, teller.words(j, print)));
      const [materials, tasks] = [teller.materials(result), teller.tasks(result)];
      return { findings, workings, materials, standsFor: teller.standsFor?.(result) ?? [], tasks, readings: [] };
    }),
  );
  const conditions = view.agreement.heating ?? view.agreement.cooling;
  if ('fault' in told || !conditions) return told;
  const readings = remembered(
    memo,
    `readings:${teller.id}`,
    [view.project, view.trades, view.agreement, view.season],
    () => attempted(() => teller.readings(result, conditions, view)),
  );
  return 'fault' in readings ? readings : { value: { ...told.value, readings: readings.value } };
}

const blind = (id: AnyTeller['id'], fault: string): Told => ({
  findings: [faultFinding(id, fault)],
  workings: {},
  materials: [],
  standsFor: [],
  tasks: [],
  readings: [],
});

const allSources: Readonly<Record<string, Source>> = Object.assign(
  {},
  couplingSources,
  ...Object.values(tellers).map((t) => t.sources),
);
