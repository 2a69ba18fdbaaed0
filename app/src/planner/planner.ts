import type { Job, Mark, Plan, Results } from '@kneewall/engine';
import type { Edit, Project, System } from '@kneewall/project';
import type { Act } from '../session/act.ts';
import type { Session, SessionEvent } from '../session/session.ts';
import type { Port } from '../workerPort.ts';
import type { FromPlanner, ToPlanner } from './messages.ts';
import { type Moved, movedBetween } from './moved.ts';

export type PlannerState = {
  /** The latest plan there is; it stays while the next is computed. */
  readonly plan?: Plan;
  /** How its findings stand, known a moment before the first plan. */
  readonly marks?: readonly Mark[];
  /** The plan of what is being tried out, while something is. */
  readonly tried?: Plan;
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
export type PlanPort = Omit<Port<ToPlanner, FromPlanner>, 'end'>;

/** Follows a session and keeps its plan. Edits go over as edits, so that the worker redoes only what they touch. */
export const createPlanner = (session: Session, port: PlanPort, unitsNow: () => System): Planner =>
  new FollowingPlanner(session, port, unitsNow);

class FollowingPlanner implements Planner {
  private readonly listeners = new Set<() => void>();
  private readonly session: Session;
  private readonly port: PlanPort;
  private readonly unitsNow: () => System;
  private state: PlannerState = { computing: true, failed: false, moved: [], wanted: [] };
  private revision = 0;
  private generation = -1;
  /** The plan to compare the next with, and the change that leads to it; absent while a project opens. */
  private basis: { readonly plan: Plan; readonly by: readonly string[] } | undefined;
  /** No plan of this project has come yet. */
  private fresh = true;
  /** The first revision of what is being tried out. */
  private triedFrom: number | undefined;

  constructor(session: Session, port: PlanPort, unitsNow: () => System) {
    this.session = session;
    this.port = port;
    this.unitsNow = unitsNow;
    session.follow((event) => this.follow(event));
    port.listen((message) => this.hear(message));
  }

  now = (): PlannerState => this.state;

  subscribe = (changed: () => void) => {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  };

  setUnits = (units: System): void => this.post((revision) => ({ type: 'units', revision, units }));

  setResults = (results: Results): void => this.post((revision) => ({ type: 'results', revision, results }));

  private set(next: Partial<PlannerState>): void {
    this.state = { ...this.state, ...next };
    for (const changed of this.listeners) changed();
  }

  private post(make: (revision: number) => ToPlanner): void {
    this.revision++;
    this.port.post(make(this.revision));
    if (this.triedFrom === undefined) this.set({ computing: true });
  }

  private follow(event: SessionEvent): void {
    if (event.type === 'opened') this.opened(event.project);
    else if (event.type === 'acted') this.acted(event.act);
    else this.tried(event.edits, event.over);
  }

  /** What is tried out is planned beside the plan, which stays until something is really changed. */
  private tried(edits: readonly Edit[], over: boolean): void {
    if (over) {
      const { tried: _old, ...kept } = this.state;
      this.state = kept;
    }
    this.triedFrom = over ? undefined : (this.triedFrom ?? this.revision + 1);
    this.post((revision) => ({ type: 'edit', revision, edits }));
  }

  private opened(project: Project): void {
    const { generation } = this.session.now();
    if (generation !== this.generation) {
      this.generation = generation;
      this.fresh = true;
      this.basis = undefined;
      const { plan: _old, marks: _marks, movedBy: _by, ...kept } = this.state;
      this.state = { ...kept, moved: [] };
    }
    this.post((revision) => ({ type: 'open', revision, project, units: this.unitsNow() }));
  }

  private acted(act: Act): void {
    const by = act.edits[0]?.path ?? [];
    // A burst of edits planned at once is compared with the plan before the first of them.
    if (this.state.plan && !this.fresh) this.basis = { plan: this.basis?.plan ?? this.state.plan, by };
    this.post((revision) => ({ type: 'edit', revision, edits: act.edits }));
  }

  private hear(message: FromPlanner): void {
    if (this.triedFrom !== undefined) {
      // One that is a step behind is shown all the same: a quick hand would never see any.
      if (message.type === 'plan' && message.revision >= this.triedFrom) this.set({ tried: message.plan });
      return;
    }
    if (message.revision !== this.revision) return;
    if (message.type === 'failed') {
      this.set({ computing: false, failed: true });
      return;
    }
    if (message.type === 'marks') {
      this.set({ marks: message.marks });
      return;
    }
    const { plan, wanted } = message;
    const news = this.basis ? { moved: movedBetween(this.basis.plan, plan), movedBy: this.basis.by } : {};
    this.basis = undefined;
    this.fresh = false;
    this.set({ plan, marks: plan.findings, wanted, computing: false, failed: false, ...news });
  }
}
