import { inspectProject, type Problem, type Project, type System } from '@kneewall/project';
import { couplingSources } from './coupling/sources.ts';
import { type Found, learned } from './find.ts';
import { builtTrades, finders } from './finders.ts';
import type { Results } from './jobs/job.ts';
import { type JudgedDrafts, judgeOne, onlySeen, seenBy } from './judgeOne.ts';
import { type Attempted, allOf, attempted } from './plan/attempted.ts';
import type { Evaluated } from './plan/evaluated.ts';
import { faultFinding } from './plan/fault.ts';
import type { Finding } from './plan/finding.ts';
import { gatherByHoldPoint } from './plan/holdPoints.ts';
import { findingOf } from './plan/judge.ts';
import { type Memo, remembered } from './plan/memo.ts';
import type { Plan } from './plan/plan.ts';
import { printerFor } from './plan/printer.ts';
import type { ResultBase } from './plan/resultBase.ts';
import type { Source } from './plan/source.ts';
import type { PlanView, Said } from './plan/trade.ts';
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

/** For whom it is said, of which document. */
type By = { readonly project: Project; readonly units: System; readonly memo: Memo };

/** The plan of what was found, in the words and units of a person. A trade that cannot say what it found is blind. */
export function tellAll(found: Found, results: Results, units: System, memo: Memo): Evaluated {
  const by: By = { project: found.project, units, memo };
  const tell = ({ id, found }: Found['trades'][number], view: PlanView): Told => {
    const tale = tellOne(id, found, view, by);
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

const saidParts = ['tasks', 'materials', 'findings'] as const;
type SaidByTrade = { readonly [K in keyof Said]: readonly Said[K][] };

/** What a trade listens to of what all others said, and nothing else. */
const heardOf = ({ tasks, materials, findings }: SaidByTrade, hears: readonly (keyof Said)[]): Said => ({
  tasks: hears.includes('tasks') ? tasks.flat() : [],
  materials: hears.includes('materials') ? materials.flat() : [],
  findings: hears.includes('findings') ? findings.flat() : [],
});

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
  const parts: SaidByTrade = {
    tasks: [...told.map((t) => t.tasks), ...own],
    materials: told.map((t) => t.materials),
    findings: told.map((t) => t.findings),
  };
  found.trades.forEach(({ id, found: own }, at) => {
    const { sum, hears = saidParts } = tellers[id];
    const finder = finders.find((f) => f.id === id);
    if (!sum || !finder || 'fault' in own) return;
    const { result } = own.value;
    const heard = hears.flatMap((part): readonly unknown[] => parts[part]);
    const sums = remembered(memo, `sum:${id}`, [result, ...heard], () =>
      attempted(() => sum(result, heardOf(parts, hears))),
    );
    const summed = learned(finder, sums, results, memo);
    if ('value' in summed) {
      view = { ...view, trades: { ...view.trades, [id]: summed.value } };
      const asked = new Set(wanted.map((j) => j.key));
      wanted = [...wanted, ...summed.value.wanted.filter((j) => !asked.has(j.key))];
    }
    trades = trades.with(at, { id, found: judgeOne(finder, summed, project, view, memo, `judge-sum:${id}`) });
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

/** What one trade says: each part of it is said again only when what it tells of has moved. */
function tellOne(id: keyof typeof tellers, found: Attempted<JudgedDrafts>, view: PlanView, by: By): Attempted<Told> {
  if ('fault' in found) return found;
  const { result, judged, workings } = found.value;
  const { project, units, memo } = by;
  const teller = tellers[id];
  const told = <T>(part: string, from: readonly unknown[], tell: () => T): Attempted<T> =>
    remembered(memo, `${part}:${id}`, from, () => attempted(tell));
  const finder = finders.find((f) => f.id === id);
  const conditions = view.agreement.heating ?? view.agreement.cooling;
  return allOf<Told>({
    findings: told('findings', [judged, units], () => {
      const print = printerFor(units);
      return judged.map((j) => findingOf(id, j, teller.words(j, print)));
    }),
    workings: { value: workings },
    materials: told('materials', [result], () => teller.materials(result)),
    standsFor: told('stands-for', [result], () => teller.standsFor?.(result) ?? []),
    tasks: told('tasks', [result], () => teller.tasks(result)),
    readings:
      conditions && finder
        ? told('readings', [...seenBy(finder, project, view), conditions, result], () =>
            teller.readings(result, conditions, onlySeen(finder, project, view, memo)),
          )
        : { value: [] },
  });
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
