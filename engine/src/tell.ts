import { inspectProject, type Problem, type System } from '@kneewall/project';
import { couplingSources } from './coupling/sources.ts';
import type { Found, JudgedDrafts } from './find.ts';
import { builtTrades } from './finders.ts';
import { type Attempted, attempted } from './plan/attempted.ts';
import { faultFinding } from './plan/fault.ts';
import type { Finding } from './plan/finding.ts';
import { gatherByHoldPoint } from './plan/holdPoints.ts';
import { findingOf } from './plan/judge.ts';
import { type Memo, remembered } from './plan/memo.ts';
import type { Plan } from './plan/plan.ts';
import { printerFor } from './plan/printer.ts';
import type { Source } from './plan/source.ts';
import type { PlanView, ResultBase } from './plan/trade.ts';
import { type AnyTeller, tellers } from './tellers.ts';
import { engineVersion } from './version.ts';

/** What one trade says. */
type Told = {
  readonly findings: readonly Finding[];
  readonly workings: JudgedDrafts['workings'];
  readonly materials: Plan['materials'];
  readonly tasks: Plan['tasks'];
  readonly readings: Plan['readings'];
};

/** The plan of what was found, in the words and units of a person. A trade that cannot say what it found is blind. */
export function tellAll({ project, view, trades }: Found, units: System, memo: Memo): Plan {
  const told = trades.map(({ id, found }) => {
    const tale = tellOne(tellers[id], found, view, units, memo);
    return 'value' in tale ? tale.value : blind(id, tale.fault);
  });
  const findings = told.flatMap((t) => t.findings);
  const base = Object.values(view.trades) as ResultBase[];
  return {
    engine: { version: engineVersion, trades: builtTrades },
    findings,
    holdPoints: gatherByHoldPoint(findings),
    trades: view.trades,
    materials: told.flatMap((t) => t.materials),
    tasks: told.flatMap((t) => t.tasks),
    readings: told.flatMap((t) => t.readings),
    workings: Object.assign({}, ...base.map((r) => r.workings), ...told.map((t) => t.workings)),
    agreement: view.agreement,
    season: view.season,
    sources: allSources,
    problems: remembered(memo, 'problems', [project], () => inspectProject(project)) as readonly Problem[],
  };
}

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
      return { findings, workings, materials: teller.materials(result), tasks: teller.tasks(result), readings: [] };
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
  tasks: [],
  readings: [],
});

const allSources: Readonly<Record<string, Source>> = Object.assign(
  {},
  couplingSources,
  ...Object.values(tellers).map((t) => t.sources),
);
