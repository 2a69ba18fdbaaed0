import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import type { Conductor, Fill, Run } from './result.ts';

/** m; from memory. Source: `circuit.sight`. */
export const sightMost = 15.24;
/** Shares of the voltage: below the first a compressor may stall, below both together it is near. Source: `circuit.starting`. */
const [startingLeast, startingWanted] = [0.8, 0.05];

const draftOf = (run: Run, word: string) => ({
  id: `${word}:${run.id}`,
  subject: run.id,
  working: `circuit/${word}:${run.id}`,
});

const conductorFacts = ({ area, gauge, own }: Conductor): Record<string, number> => ({
  area,
  ...(gauge === undefined ? { thin: 1 } : {}),
  ...(own ? { own: 1 } : {}),
});

/** Everything a circuit has to answer for. */
export function runFindings(run: Run, view: PlanView): Draft[] {
  return [
    wire(run),
    protection(run),
    drop(run, view),
    ...starting(run),
    ...ground(run, view),
    ...fill(run),
    ...disconnect(run, view),
  ];
}

const inputOf = (run: Run, view: PlanView) => view.project.routes.wires[run.id];

function wire(run: Run): Draft {
  const least = run.rating.ok ? run.rating.value.least.high : undefined;
  return {
    ...draftOf(run, 'wire'),
    holdPoint: 'order',
    consequence: 'harm',
    kind: 'current',
    value: run.ampacity,
    limit: least === undefined ? {} : { min: least },
    source: 'circuit.ampacity',
    facts: {
      metal: run.metal,
      laid: run.laid,
      ...(run.conductor.ok ? conductorFacts(run.conductor.value) : {}),
      ...(run.ambient.ok ? { air: run.ambient.value.high } : {}),
      ...(run.protection.ok ? { protection: run.protection.value.size } : {}),
      ...(run.rating.ok ? { most: run.rating.value.most } : {}),
    },
  };
}

function protection(run: Run): Draft {
  const { rating } = run;
  return {
    ...draftOf(run, 'protection'),
    holdPoint: 'order',
    consequence: 'harm',
    kind: 'current',
    value: attempt(() => required(run.protection).size),
    limit: rating.ok ? { min: rating.value.least.likely, max: Math.max(rating.value.most, 15) } : {},
    source: 'circuit.motor-compressor',
    facts: {
      ...(rating.ok ? { least: rating.value.least.likely, most: rating.value.most, by: rating.value.by } : {}),
      ...(run.protection.ok && run.protection.value.own ? { own: 1 } : {}),
    },
  };
}

function drop(run: Run, view: PlanView): Draft {
  return {
    ...draftOf(run, 'drop'),
    holdPoint: 'order',
    consequence: 'damage',
    kind: 'fraction',
    value: attempt(() => required(run.drop).share),
    limit: { max: scenario().of(view.project.routes.wires.dropMost) },
    source: 'circuit.drop',
    facts: {
      ...(run.drop.ok ? { volts: run.drop.value.volts.likely } : {}),
      ...(run.length.ok ? { length: run.length.value.likely } : {}),
      ...(run.conductor.ok ? conductorFacts(run.conductor.value) : {}),
      ...(run.rating.ok ? { current: run.rating.value.current.likely, currentBy: run.rating.value.currentBy } : {}),
    },
  };
}

const starting = (run: Run): Draft[] =>
  run.starting === undefined
    ? []
    : [
        {
          ...draftOf(run, 'starting'),
          holdPoint: 'order',
          consequence: 'damage',
          kind: 'fraction',
          value: run.starting,
          limit: { min: startingLeast },
          marginWanted: startingWanted,
          source: 'circuit.starting',
        },
      ];

/** Only where a ground is named: else the plan's own is bought with the cable. */
function ground(run: Run, view: PlanView): Draft[] {
  const own = scenario().maybe(inputOf(run, view).ground);
  if (own === undefined) return [];
  const needed = run.ground.ok ? run.ground.value : undefined;
  return [
    {
      ...draftOf(run, 'ground'),
      holdPoint: 'order',
      consequence: 'harm',
      kind: 'wire-size',
      value: attempt(() => {
        required(run.ground);
        return own;
      }),
      limit: needed === undefined ? {} : { min: needed.area },
      source: run.metal === 'copper' ? 'circuit.grounding' : 'circuit.grounding-aluminium',
      facts: { own, ...(needed === undefined ? {} : { needed: needed.area }) },
    },
  ];
}

/** Only where the run lies in conduit. */
const fill = (run: Run): Draft[] =>
  run.fill === undefined
    ? []
    : [
        {
          ...draftOf(run, 'fill'),
          holdPoint: 'order',
          consequence: 'damage',
          kind: 'fraction',
          value: attempt(() => required(run.fill as Outcome<Fill>).share),
          limit: run.fill.ok ? { max: run.fill.value.most } : {},
          source: 'circuit.fill',
          facts: run.fill.ok ? fillFacts(run.fill.value) : {},
        },
      ];

const fillFacts = ({ count, pipe, name }: Fill): Record<string, number | string> => ({
  count,
  pipe,
  ...(name === undefined ? {} : { name }),
});

function disconnect(run: Run, view: PlanView): Draft[] {
  return [
    {
      ...draftOf(run, 'disconnect'),
      holdPoint: 'order',
      consequence: 'harm',
      kind: 'current',
      value: attempt(() => required(run.disconnect).size),
      limit: run.disconnect.ok ? { min: run.disconnect.value.least } : {},
      source: 'circuit.disconnect',
      facts: 'missing' in inputOf(run, view).disconnect ? {} : { own: 1 },
    },
    {
      ...draftOf(run, 'disconnect-sight'),
      holdPoint: 'connect',
      consequence: 'harm',
      kind: 'length',
      value: run.sight,
      limit: { max: sightMost },
      source: 'circuit.sight',
    },
  ];
}
