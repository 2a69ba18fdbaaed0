import { inOrder, type Project, type Resolved } from '@kneewall/project';
import { type NetworkProblem, networkProblems } from '../../physics/network/index.ts';
import type { Outcome } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { AirModel } from '../ductwork.ts';
import { networkOf, nominalAir } from '../flows.ts';
import { type Ducts, sideOf } from '../model.ts';

export type FaultKind =
  | 'run-circles'
  | 'run-joins-nothing'
  | 'run-joins-other-side'
  | 'run-ends-blind'
  | 'run-without-size'
  | 'run-without-length'
  | 'register-without-run'
  | 'register-without-opening'
  | 'filter-without-face'
  | 'table-out-of-order'
  | 'no-registers'
  | 'no-grilles'
  | 'one-register'
  | 'unsolvable';

/** Something in the ducts as drawn with which no air can flow as meant, and what it is about. */
export type Fault = { readonly kind: FaultKind; readonly id: string; readonly name: string };

type Section = Resolved<NonNullable<NonNullable<NonNullable<Project['routes']>['ducts']>['sections']>>[string];

/**
 * Everything wrong with the ducts as drawn, each with its place; what is only not entered yet is not among it. `rooms`
 * is how many there are to be served. Never throws.
 */
export function faultsOf(ducts: Ducts, model: Outcome<AirModel>, rooms: number): Fault[] {
  const found = [
    ...inOrder(ducts.sections).flatMap(([id, x]) => runFault(id, x, ducts)),
    ...inOrder(ducts.terminals).flatMap(([id, t]): Fault[] =>
      t.section !== undefined && !ducts.sections[t.section]
        ? [{ kind: 'register-without-run', id, name: t.name ?? id }]
        : [],
    ),
    ...(model.ok ? [...wholeFaults(model.value, rooms), ...networkFaults(model.value)] : []),
  ];
  return found.filter((f, i) => found.findIndex((g) => g.kind === f.kind && g.id === f.id) === i);
}

function runFault(id: string, x: Section, ducts: Ducts): Fault[] {
  const named = (kind: FaultKind): Fault[] => [{ kind, id, name: x.name ?? id }];
  const s = scenario();
  const [d, w, h] = [s.maybe(x.diameter), s.maybe(x.width), s.maybe(x.height)];
  const entered = d !== undefined || (w !== undefined && h !== undefined);
  const faults = entered && !((d ?? 0) > 0) && !((w ?? 0) * (h ?? 0) > 0) ? named('run-without-size') : [];
  if (x.from === undefined) return faults;
  const next = ducts.sections[x.from];
  if (!next) return [...faults, ...named('run-joins-nothing')];
  if (s.choice(next.side) !== s.choice(x.side)) return [...faults, ...named('run-joins-other-side')];
  return circles(id, ducts) ? [...faults, ...named('run-circles')] : faults;
}

/** Whether the way from a run to the air handler comes back to it. */
function circles(id: string, ducts: Ducts): boolean {
  let at = ducts.sections[id]?.from;
  for (let steps = Object.keys(ducts.sections).length; at !== undefined && steps > 0; steps--) {
    if (at === id) return true;
    at = ducts.sections[at]?.from;
  }
  return false;
}

/** What is missing for air to go round, and runs at whose end nothing is. */
function wholeFaults(model: AirModel, rooms: number): Fault[] {
  const whole = (kind: FaultKind): Fault => ({ kind, id: '', name: '' });
  const on = (side: 'supply' | 'return') => model.terminals.filter((t) => sideOf(model, t.section) === side);
  const registers = on('supply');
  const [only] = registers;
  const ends = new Set([...model.terminals.map((t) => t.section), ...model.sections.map((x) => x.from)]);
  return [
    ...(registers.length === 0 ? [whole('no-registers')] : []),
    ...(on('return').length === 0 ? [whole('no-grilles')] : []),
    ...(registers.length === 1 && only && rooms > 1
      ? [{ kind: 'one-register' as const, id: only.id, name: only.name }]
      : []),
    ...model.sections.flatMap(({ id, name }): Fault[] => (ends.has(id) ? [] : [{ kind: 'run-ends-blind', id, name }])),
  ];
}

const networkFaults = (model: AirModel): Fault[] =>
  networkProblems(networkOf(model, nominalAir)).flatMap((p) => {
    // Nodes that nothing joins are the far side of registers or grilles that are not there.
    if (p.code === 'several' || p.code === 'idle' || p.code === 'not-joined') return [];
    return [faultOf(p, model)];
  });

/** A problem of the network in terms of what was drawn. */
function faultOf({ id: link, code }: NetworkProblem, model: AirModel): Fault {
  const [what = '', ...rest] = link.split(' ');
  const id = rest.join(' ');
  const of = what === 'section' ? model.sections : what === 'terminal' ? model.terminals : [];
  const name = of.find((x) => x.id === id)?.name ?? id;
  if (what === 'section') return { kind: code === 'no-resistance' ? 'run-without-length' : 'unsolvable', id, name };
  if (what === 'terminal') return { kind: 'register-without-opening', id, name };
  if (what === 'filter') return { kind: 'filter-without-face', id: '', name };
  return { kind: 'table-out-of-order', id: model.blower.setting, name: model.blower.setting };
}
