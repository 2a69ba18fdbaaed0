import type { Edit, Problem, Project } from '@kneewall/project';
import { restore, withWaiting } from '../store/restore.ts';
import { createSaver, type Saver, type Saving } from '../store/saver.ts';
import type { Store } from '../store/store.ts';
import type { Act, Change } from './act.ts';
import { appliedAll, copyOf, editsFor, entryFor } from './changes.ts';
import { followed, type History, historyOf, noHistory, takenBack } from './history.ts';
import { randomId } from './newIds.ts';
import { noTrial, type Trial, trialOf } from './trial.ts';

/** Where the open project came from. Only a stored one is on this device; the first change stores the others. */
export type Origin =
  | { readonly kind: 'demo'; readonly id: string }
  | { readonly kind: 'new' }
  | { readonly kind: 'file'; readonly name: string }
  | { readonly kind: 'stored'; readonly id: string };

/** Why no change can be made, where none can. */
export type Barred = 'opening' | 'insecure' | 'other-tab' | 'damaged';

export type SessionState = {
  /** Rises whenever another project is opened. */
  readonly generation: number;
  readonly origin: Origin;
  readonly project: Project;
  /** The project as it would be with what is being tried out. */
  readonly tried?: Project;
  readonly history: History;
  readonly barred?: Barred;
  readonly saving: Saving;
  /** Acts on this device that no other device has. */
  readonly onlyHere: number;
  readonly lastAct?: Act;
  readonly damagedAt?: number;
};

/** What others may follow: a project opened, acts done to the open one, or edits that are only tried out on it. */
export type SessionEvent =
  | { readonly type: 'opened'; readonly project: Project }
  | { readonly type: 'acted'; readonly act: Act }
  /** `over`: the edits lead back to the project itself. */
  | { readonly type: 'tried'; readonly edits: readonly Edit[]; readonly over: boolean };

export type Session = {
  now(): SessionState;
  subscribe(changed: () => void): () => void;
  follow(listener: (event: SessionEvent) => void): () => void;
  open(project: Project, origin: Exclude<Origin, { kind: 'stored' }>): void;
  openStored(id: string): Promise<readonly Problem[]>;
  /** Does here what another tab has done to the open project since, act by act, so that the screen stays where it is. */
  catchUp(): Promise<void>;
  /** One act. What the document refuses comes back as problems, and nothing has changed. */
  change(changes: readonly Change[]): readonly Problem[];
  /** Shows what changes would do, in place of those tried before; none gives up. Nothing is kept, nothing to undo. */
  tryOut(changes: readonly Change[]): void;
  undo(): void;
  redo(): void;
  bar(barred: Barred | undefined): void;
  hurry(): void;
};

type Given = { readonly store: Store; readonly clock: () => number; readonly device?: string };

export const createSession = (given: Given): Session => new OpenProject(given);

/** The one project that is open, its history, and what of it is kept. */
class OpenProject implements Session {
  private readonly listeners = new Set<() => void>();
  private readonly followers = new Set<(event: SessionEvent) => void>();
  private readonly store: Store;
  private readonly clock: () => number;
  private readonly device: string;
  private readonly saver: Saver;
  private state: SessionState;
  private seq = 0;
  private trial: Trial = noTrial;
  private outside: Barred | undefined = 'opening';

  constructor({ store, clock, device = randomId() }: Given) {
    this.store = store;
    this.clock = clock;
    this.device = device;
    this.saver = createSaver(store, () => this.set({ saving: this.saver.now() }));
    this.state = {
      generation: 0,
      origin: { kind: 'new' },
      project: { schema: 1 },
      history: noHistory,
      barred: 'opening',
      saving: this.saver.now(),
      onlyHere: 0,
    };
  }

  now = (): SessionState => this.state;

  subscribe = (changed: () => void) => {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  };

  follow = (listener: (event: SessionEvent) => void) => {
    this.followers.add(listener);
    return () => this.followers.delete(listener);
  };

  open = (project: Project, origin: Origin): void => this.openWith(project, origin, []);

  openStored = async (id: string): Promise<readonly Problem[]> => {
    const stored = withWaiting(await this.store.load(id), this.saver.now().waiting, id);
    if (!stored) return [];
    const back = restore(stored);
    if (!back.ok) return back.problems;
    this.openWith(back.project, { kind: 'stored', id }, back.acts, back.damagedAt);
    return [];
  };

  catchUp = async (): Promise<void> => {
    const { origin, barred } = this.state;
    if (origin.kind !== 'stored' || barred !== 'other-tab') return;
    const stored = await this.store.load(origin.id);
    const back = stored && restore(stored);
    if (this.state.origin !== origin || !back?.ok) return;
    if (back.damagedAt !== undefined) return this.openWith(back.project, origin, back.acts, back.damagedAt);
    for (const act of back.acts.slice(this.state.onlyHere)) {
      this.follows(act, { project: appliedAll(this.state.project, act.edits).value });
    }
  };

  change = (changes: readonly Change[]): readonly Problem[] => {
    const from = this.state.origin.kind === 'demo' ? copyOf(this.state.project) : this.state.project;
    const edits = editsFor(from, changes, this.device, this.seq + 1);
    return edits.length === 0 ? [] : this.perform('do', from, edits);
  };

  tryOut = (changes: readonly Change[]): void => {
    const next = trialOf(this.state.project, this.state.barred ? [] : changes, this.device);
    const edits = [...this.trial.back, ...next.edits];
    if (edits.length === 0) return;
    this.trial = next;
    this.tell({ type: 'tried', edits, over: next.edits.length === 0 });
    const { tried: _old, ...state } = this.state;
    this.state = state;
    this.set(next.project ? { tried: next.project } : {});
  };

  undo = (): void => {
    const act = this.state.history.undo.at(-1);
    if (act) this.perform('undo', this.state.project, takenBack(act, this.seq + 1));
  };

  redo = (): void => {
    const act = this.state.history.redo.at(-1);
    if (act) this.perform('redo', this.state.project, takenBack(act, this.seq + 1));
  };

  bar = (barred: Barred | undefined): void => {
    this.outside = barred;
    this.state = this.withBar(this.state);
    this.set({});
  };

  hurry = (): void => this.saver.hurry();

  private set(next: Partial<SessionState>): void {
    this.state = { ...this.state, ...next };
    for (const changed of this.listeners) changed();
  }

  private tell(event: SessionEvent): void {
    for (const listener of this.followers) listener(event);
  }

  private withBar({ barred: _was, ...free }: SessionState): SessionState {
    const barred = free.damagedAt === undefined ? this.outside : 'damaged';
    return barred ? { ...free, barred } : free;
  }

  private openWith(project: Project, origin: Origin, acts: readonly Act[], damagedAt?: number): void {
    this.tryOut([]);
    this.state = this.withBar({
      generation: this.state.generation + 1,
      origin,
      project,
      history: historyOf(acts),
      saving: this.state.saving,
      onlyHere: acts.length,
      ...(damagedAt === undefined ? {} : { damagedAt }),
    });
    this.seq = acts.reduce((n, act) => n + act.edits.length, 0);
    this.tell({ type: 'opened', project });
    this.set({});
  }

  /** Has an act behind it, whoever did it. */
  private follows(act: Act, next: Pick<SessionState, 'project'> & Partial<SessionState>): void {
    this.seq += act.edits.length;
    this.set({ ...next, history: followed(this.state.history, act), onlyHere: act.number, lastAct: act });
    this.tell({ type: 'acted', act });
  }

  /** One act on `from`: the open project, or the copy that a demo's first change makes of it. */
  private perform(kind: Act['kind'], from: Project, edits: readonly Edit[]): readonly Problem[] {
    if (this.state.barred) return [];
    this.tryOut([]);
    const { value: project, problems } = appliedAll(from, edits);
    if (problems.length > 0) return problems;
    const { origin, onlyHere } = this.state;
    const id = origin.kind === 'stored' ? origin.id : randomId();
    const act: Act = { number: onlyHere + 1, kind, edits };
    const firstBase = origin.kind === 'stored' ? undefined : from;
    if (from !== this.state.project) this.tell({ type: 'opened', project: from });
    this.follows(act, { origin: { kind: 'stored', id }, project });
    this.saver.push(entryFor(id, act, project, firstBase, this.clock()));
    return [];
  }
}
