import type { Job, Plan, Results } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import type { Session } from '../session/session.ts';
import type { FromPlanner, ToPlanner } from './messages.ts';
import { type Moved, movedBetween } from './moved.ts';

export type PlannerState = {
  /** The latest plan there is; it stays while the next is computed. */
  readonly plan?: Plan;
  readonly computing: boolean;
  readonly failed: boolean;
  /** What the last change to the project moved. */
  readonly moved: readonly Moved[];
  /** The document path of that change. */
  readonly movedBy?: readonly string[];
  readonly wanted: readonly Job[];
};

export type Planner = {
  now(): PlannerState;
  subscribe(changed: () => void): () => void;
  setUnits(units: System): void;
  setResults(results: Results): void;
};

/** The part of a worker the planner needs. */
export type PlanPort = { post(message: ToPlanner): void; listen(heard: (message: FromPlanner) => void): void };

/** Follows a session and keeps its plan. Edits go over as edits, so that the worker redoes only what they touch. */
export function createPlanner(session: Session, port: PlanPort, unitsNow: () => System): Planner {
  const listeners = new Set<() => void>();
  let state: PlannerState = { computing: true, failed: false, moved: [], wanted: [] };
  let revision = 0;
  let generation = -1;
  /** The plan to compare the next with, and the change that leads to it; absent while a project opens. */
  let basis: { plan: Plan; by: readonly string[] } | undefined;
  let fresh = true;
  const set = (next: Partial<PlannerState>) => {
    state = { ...state, ...next };
    for (const l of listeners) l();
  };
  const post = (make: (revision: number) => ToPlanner) => {
    revision++;
    port.post(make(revision));
    set({ computing: true });
  };
  session.follow((event) => {
    if (event.type === 'opened') {
      const another = session.now().generation !== generation;
      generation = session.now().generation;
      if (another) {
        fresh = true;
        basis = undefined;
        const { plan: _old, movedBy: _by, ...kept } = state;
        state = { ...kept, moved: [] };
      }
      post((r) => ({ type: 'open', revision: r, project: event.project, units: unitsNow() }));
      return;
    }
    const by = event.act.edits[0]?.path ?? [];
    // A burst of edits planned at once is compared with the plan before the first of them.
    if (state.plan && !fresh) basis = basis ? { ...basis, by } : { plan: state.plan, by };
    post((r) => ({ type: 'edit', revision: r, edits: event.act.edits }));
  });
  port.listen((message) => {
    if (message.revision !== revision) return;
    if (message.type === 'failed') return set({ computing: false, failed: true });
    const { plan, wanted } = message;
    const news = basis ? { moved: movedBetween(basis.plan, plan), movedBy: basis.by } : {};
    basis = undefined;
    fresh = false;
    set({ plan, wanted, computing: false, failed: false, ...news });
  });
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    setUnits: (units) => post((r) => ({ type: 'units', revision: r, units })),
    setResults: (results) => post((r) => ({ type: 'results', revision: r, results })),
  };
}
