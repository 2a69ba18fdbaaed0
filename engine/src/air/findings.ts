import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { agreedFindings } from './agreedFindings.ts';
import { balanceFinding } from './balance/balanceFinding.ts';
import { heldFlow } from './blower/heldFlow.ts';
import { operatingPointsFinding } from './blower/operatingPointsFinding.ts';
import { type Bought, boughtSections } from './bought.ts';
import { closedDoorFindings } from './doors/closedDoorFindings.ts';
import { housePressureFinding } from './doors/housePressureFinding.ts';
import type { AirFlows, AirModel, DuctSection } from './ductwork.ts';
import { faultFindings } from './faults/faultFindings.ts';
import { loadedFilter } from './filters/loadedFilter.ts';
import { beneathTable } from './flows.ts';
import type { Found } from './found.ts';
import { hangingFindings } from './hangingFindings.ts';
import { jacketFinding } from './jacketFinding.ts';
import { leakTest } from './leakTest.ts';
import { type Change, smallestChange } from './mend.ts';
import { sideOf } from './model.ts';
import { plenumFinding } from './plenumFinding.ts';
import { blowerSound } from './registers/blowerSound.ts';
import { coldDropFindings } from './registers/coldDropFindings.ts';
import { draughtFindings } from './registers/draughtFindings.ts';
import { returnBends } from './registers/returnBends.ts';
import { roomSoundFindings } from './registers/roomSoundFindings.ts';
import { throwFindings } from './registers/throwFindings.ts';
import { warmReachFinding } from './registers/warmReachFinding.ts';
import type { AirResult } from './result.ts';
import { roomFindings } from './roomFindings.ts';
import { seasonFindings } from './seasonFindings.ts';
import { sizesFindings } from './sizesFinding.ts';
import { spaceFindings } from './spaceFindings.ts';
import { velocityFindings } from './velocityFindings.ts';

/** What the ducts have to answer for. Without any ducts drawn there is one statement: that they are missing. */
export function findings(result: AirResult, view: PlanView): Drafts {
  const bought = boughtSections(view.project);
  const model = result.model;
  const found = [
    staticPressure(result, view, bought),
    ...faultFindings(result, view),
    ...operatingPointsFinding(result),
    ...housePressureFinding(result, view),
    ...(model.ok && result.flows.ok ? known(result, model.value, result.flows.value, view, bought) : []),
  ];
  return {
    drafts: found.map((f) => f.draft),
    workings: Object.fromEntries(found.map((f) => [f.draft.working, f.working])),
  };
}

const known = (result: AirResult, model: AirModel, flows: AirFlows, view: PlanView, bought: Bought): Found[] => [
  totalFlow(result, view),
  ...sizesFindings(result),
  ...spaceFindings(model, view, bought),
  returnPath(model, flows),
  filterVelocity(result),
  ...loadedFilter(model, flows, chosenUnit(view)?.blower.staticMost, view),
  insulation(model),
  ...jacketFinding(model, view),
  leakage(flows),
  leakTest(model, flows, view),
  ...hangingFindings(model, view),
  ...plenumFinding(view),
  ...velocityFindings(model, flows, bought),
  ...roomFindings(result, view),
  balanceFinding(result, (room) => view.project.house.rooms[room]?.name ?? room, chosenUnit(view)?.blower.staticMost),
  ...throwFindings(model, flows, view),
  ...warmReachFinding(model, view),
  ...coldDropFindings(model, view),
  ...draughtFindings(model, view),
  ...roomSoundFindings(model, flows, view),
  ...blowerSound(model, flows, view),
  ...returnBends(model, view),
  ...closedDoorFindings(result, model, flows, view),
  ...agreedFindings(result, view),
  ...seasonFindings(view),
];

const freeSections = (model: AirModel, bought: Bought): string[] =>
  model.sections.filter((x) => bought[x.id] === undefined).map((x) => x.id);

/** Words need the change's names and numbers. */
const changeFacts = (change: Change | undefined): Record<string, number | string> =>
  change
    ? {
        section: change.section.name,
        from: change.section.diameter,
        to: change.diameter,
        pressureThen: change.flows.staticPressure,
        flowThen: change.flows.flow,
      }
    : {};

function staticPressure(result: AirResult, view: PlanView, bought: Bought): Found {
  const { recorder, steps } = recordWorking();
  const most = chosenUnit(view)?.blower.staticMost;
  const { model, flows, staticPressure: value } = result;
  if (flows.ok && value.ok) {
    const f = flows.value;
    recorder.step('Q', 'solved', { residual: f.residual }, f.flow, 'm³/s', 'air.flows');
    recorder.step('dp', 'solved', { residual: f.residual }, value.value.likely, 'Pa', 'air.flows');
  }
  const over = model.ok && flows.ok && most !== undefined && flows.value.staticPressure > most;
  const change =
    over && model.ok
      ? smallestChange(model.value, freeSections(model.value, bought), (f) => f.staticPressure <= most)
      : undefined;
  return {
    draft: {
      id: 'static-pressure',
      subject: 'air handler',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'pressure',
      value: most === undefined && value.ok ? missing('candidates.*.blower.staticMost') : value,
      limit: most === undefined ? {} : { max: most },
      source: 'air.static',
      working: 'air/static-pressure',
      facts: {
        ...changeFacts(change),
        ...(flows.ok ? { flow: flows.value.flow } : {}),
        ...(model.ok && flows.ok && beneathTable(flows.value, model.value) ? { beneath: 1 } : {}),
        ...(model.ok && flows.ok ? heldFlow(chosenUnit(view)?.blower, model.value, flows.value) : {}),
      },
    },
    working: steps,
  };
}

const missing = (path: string): Outcome<never> => ({ ok: false, because: 'missing', paths: [path] });

const chosenUnit = (view: PlanView) => {
  const { equipment } = view.trades;
  return equipment?.chosen.ok ? equipment.candidates[equipment.chosen.value] : undefined;
};

/** The flow that the ducts let through, as a share of what the sheet's capacities are stated for. */
function totalFlow(result: AirResult, view: PlanView): Found {
  const { recorder, steps } = recordWorking();
  const stated = chosenUnit(view)?.unit.rows.flatMap((r) => r.airflow ?? []) ?? [];
  const value = attempt(() => {
    const flow = required(result.flow);
    const sheet = stated.length > 0 ? Math.max(...stated) : required<number>(missing('candidates.*.rows.*.airflow'));
    const share = flow.likely / sheet;
    recorder.step('Q', 'solved', { residual: 0 }, flow.likely, 'm³/s', 'air.flows');
    recorder.step('Q_sheet', 'table', {}, sheet, 'm³/s', 'air.sheet-flow');
    recorder.step('share', 'Q / Q_sheet', { Q: flow.likely, Q_sheet: sheet }, share, '', 'air.sheet-flow');
    return { low: flow.low / sheet, likely: share, high: flow.high / sheet };
  });
  return {
    draft: {
      id: 'total-flow',
      subject: 'air handler',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'fraction',
      value,
      limit: { min: 0.85, max: 1.2 },
      source: 'air.sheet-flow',
      working: 'air/total-flow',
      facts: result.flow.ok ? { flow: result.flow.value.likely } : {},
    },
    working: steps,
  };
}

/** The usual mistake: three fat supplies and one thin return. */
function returnPath(model: AirModel, flows: AirFlows): Found {
  const { recorder, steps } = recordWorking();
  const back = longestReturn(model, flows);
  const used = back + flows.filterPressure;
  const share = used / flows.staticPressure;
  recorder.step('dp_return', 'table', {}, back, 'Pa', 'air.flows');
  recorder.step('dp_filter', 'table', {}, flows.filterPressure, 'Pa', 'air.flows');
  recorder.step('dp_total', 'solved', { residual: flows.residual }, flows.staticPressure, 'Pa', 'air.flows');
  recorder.step(
    'share',
    '(dp_return + dp_filter) / dp_total',
    { dp_return: back, dp_filter: flows.filterPressure, dp_total: flows.staticPressure },
    share,
    '',
    'air.return-share',
  );
  return {
    draft: {
      id: 'return-path',
      subject: 'return',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'fraction',
      value: { ok: true, value: share },
      limit: { max: 0.55 },
      source: 'air.return-share',
      working: 'air/return-path',
      facts: { used, filter: flows.filterPressure },
    },
    working: steps,
  };
}

function longestReturn(model: AirModel, flows: AirFlows): number {
  const alongTo = (x: DuctSection | undefined): number =>
    x ? (flows.drops[x.id] ?? 0) + alongTo(model.sections.find((y) => y.id === x.from)) : 0;
  const ways = model.terminals
    .filter((t) => sideOf(model, t.section) === 'return')
    .map(
      (t) => t.resistance * (flows.terminals[t.id] ?? 0) ** 2 + alongTo(model.sections.find((x) => x.id === t.section)),
    );
  return Math.max(0, ...ways);
}

function filterVelocity(result: AirResult): Found {
  const { recorder, steps } = recordWorking();
  const { flows, model, filterVelocity: value } = result;
  if (flows.ok && model.ok && value.ok) {
    const inputs = { Q: flows.value.flow, A: model.value.filter.area };
    recorder.step('Q', 'solved', { residual: flows.value.residual }, inputs.Q, 'm³/s', 'air.flows');
    recorder.step('v', 'Q / A', inputs, value.value.likely, 'm/s', 'air.filter-velocity');
  }
  const limit = 1.524;
  return {
    draft: {
      id: 'filter-velocity',
      subject: 'filter',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'velocity',
      value,
      limit: { max: limit },
      source: 'air.filter-velocity',
      working: 'air/filter-velocity',
      facts: flows.ok ? { area: flows.value.flow / limit } : {},
    },
    working: steps,
  };
}

/** The thinnest insulation on any duct outside the heated rooms. */
function insulation(model: AirModel): Found {
  const outside = model.sections.filter((x) => x.place !== 'inside');
  const { recorder, steps } = recordWorking();
  const [thinnest] = [...outside].sort((a, b) => a.insulation - b.insulation || (a.id < b.id ? -1 : 1));
  const r = thinnest?.insulation ?? 0;
  recorder.step('R', 'table', {}, r, 'm²K/W', 'air.insulation');
  return {
    draft: {
      id: 'insulation',
      subject: thinnest?.id ?? 'ducts',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'r-value',
      value: thinnest ? { ok: true, value: r } : missing('routes.ducts.sections'),
      limit: { min: 1.408 },
      source: 'air.insulation',
      working: 'air/insulation',
      facts: { name: thinnest?.name ?? '' },
    },
    working: steps,
  };
}

function leakage(flows: AirFlows): Found {
  const { recorder, steps } = recordWorking();
  const inputs = { Q_supply: flows.supplyLeak, Q_return: flows.returnLeak, Q: flows.flow };
  const share = (flows.supplyLeak + flows.returnLeak) / flows.flow;
  recorder.step('share', '(Q_supply + Q_return) / Q', inputs, share, '', 'air.leakage');
  return {
    draft: {
      id: 'leakage',
      subject: 'ducts',
      holdPoint: 'close',
      consequence: 'money',
      kind: 'fraction',
      value: { ok: true, value: share },
      limit: { max: 0.06 },
      source: 'air.leakage',
      working: 'air/leakage',
    },
    working: steps,
  };
}
