import {
  applyEdit,
  canonicalJson,
  type Edit,
  type Problem,
  type Project,
  projectText,
  valueAt,
} from '@kneewall/project';
import { baseOf, type Listed, recordOf } from '../store/records.ts';
import { restore } from '../store/restore.ts';
import { createSaver, type Saving } from '../store/saver.ts';
import type { Store } from '../store/store.ts';
import type { Act, Change } from './act.ts';
import { followed, type History, historyOf, noHistory, takenBack } from './history.ts';
import { randomId } from './newIds.ts';

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
  readonly history: History;
  readonly barred?: Barred;
  readonly saving: Saving;
  /** Acts on this device that no other device has. */
  readonly onlyHere: number;
  readonly lastAct?: Act;
  readonly damagedAt?: number;
};

/** What others may follow: a project opened, or acts done to the open one. */
export type SessionEvent =
  | { readonly type: 'opened'; readonly project: Project }
  | { readonly type: 'acted'; readonly act: Act };

export type Session = {
  now(): SessionState;
  subscribe(changed: () => void): () => void;
  follow(listener: (event: SessionEvent) => void): () => void;
  open(project: Project, origin: Exclude<Origin, { kind: 'stored' }>): void;
  openStored(id: string): Promise<readonly Problem[]>;
  /** One act. What the document refuses comes back as problems, and nothing has changed. */
  change(changes: readonly Change[]): readonly Problem[];
  undo(): void;
  redo(): void;
  bar(barred: Barred | undefined): void;
  hurry(): void;
};

/** The log is short to replay while a whole copy is put down this often. */
const actsPerBase = 40;

type Given = { readonly store: Store; readonly clock: () => number; readonly device?: string };

export function createSession({ store, clock, device = randomId() }: Given): Session {
  const listeners = new Set<() => void>();
  const followers = new Set<(event: SessionEvent) => void>();
  let seq = 0;
  let outside: Barred | undefined = 'opening';
  const set = (next: Partial<SessionState>) => {
    state = { ...state, ...next };
    for (const l of listeners) l();
  };
  const saver = createSaver(store, () => set({ saving: saver.now() }));
  let state: SessionState = {
    generation: 0,
    origin: { kind: 'new' },
    project: { schema: 1 },
    history: noHistory,
    barred: 'opening',
    saving: saver.now(),
    onlyHere: 0,
  };
  const withBar = ({ barred: _was, ...free }: SessionState): SessionState => {
    const barred = free.damagedAt === undefined ? outside : 'damaged';
    return barred ? { ...free, barred } : free;
  };
  const tell = (event: SessionEvent) => {
    for (const f of followers) f(event);
  };
  const openWith = (project: Project, origin: Origin, acts: readonly Act[], damagedAt?: number) => {
    state = withBar({
      generation: state.generation + 1,
      origin,
      project,
      history: historyOf(acts),
      saving: state.saving,
      onlyHere: acts.length,
      ...(damagedAt === undefined ? {} : { damagedAt }),
    });
    seq = acts.reduce((n, a) => n + a.edits.length, 0);
    tell({ type: 'opened', project });
    set({});
  };
  const perform = (kind: Act['kind'], edits: readonly Edit[]): readonly Problem[] => {
    if (state.barred) return [];
    const start = state.origin.kind === 'stored' ? state : becomeStored(state);
    let project = start.project;
    for (const edit of edits) {
      const applied = applyEdit(project, edit);
      if (applied.problems.length > 0) return applied.problems;
      project = applied.value;
    }
    seq += edits.length;
    const act: Act = { number: state.onlyHere + 1, kind, edits };
    keep(start, project, act);
    return [];
  };
  const keep = (start: SessionState, project: Project, act: Act) => {
    const { id } = start.origin as { id: string };
    const fresh = state.origin.kind !== 'stored';
    const listed: Listed = { id, name: project.about?.name ?? 'Without a name', changed: clock() };
    const base = fresh
      ? baseOf(id, projectText(start.project), 0)
      : act.number % actsPerBase === 0
        ? baseOf(id, projectText(project), act.number)
        : undefined;
    if (fresh && start.project !== state.project) tell({ type: 'opened', project: start.project });
    set({ origin: start.origin, project, history: followed(state.history, act), onlyHere: act.number, lastAct: act });
    tell({ type: 'acted', act });
    saver.push({ record: recordOf(id, act), listed, ...(base ? { base } : {}) });
  };
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    follow: (listener) => {
      followers.add(listener);
      return () => followers.delete(listener);
    },
    open: (project, origin) => openWith(project, origin, []),
    openStored: async (id) => {
      const stored = await store.load(id);
      if (!stored) return [];
      const back = restore(stored);
      if (!back.ok) return back.problems;
      openWith(back.project, { kind: 'stored', id }, back.acts, back.damagedAt);
      return [];
    },
    change: (changes) => {
      const from = state.origin.kind === 'demo' ? copyOf(state.project) : state.project;
      const edits = changes
        .map(({ path, after }) => ({ path, before: valueAt(from, path), after }))
        .filter(({ before, after }) => canonicalJson(before) !== canonicalJson(after))
        .map((edit, i) => ({ device, seq: seq + i + 1, ...edit }));
      return edits.length === 0 ? [] : perform('do', edits);
    },
    undo: () => {
      const act = state.history.undo.at(-1);
      if (act) perform('undo', takenBack(act, seq + 1));
    },
    redo: () => {
      const act = state.history.redo.at(-1);
      if (act) perform('redo', takenBack(act, seq + 1));
    },
    bar: (barred) => {
      outside = barred;
      state = withBar(state);
      set({});
    },
    hurry: () => saver.hurry(),
  };
}

/** A demo stays as it is; what gets changed is a copy of it that says so in its name. */
const copyOf = (project: Project): Project => ({
  ...project,
  about: { ...project.about, name: `Copy of ${project.about?.name ?? 'the demo'}` },
});

const becomeStored = (state: SessionState): SessionState => ({
  ...state,
  origin: { kind: 'stored', id: randomId() },
  project: state.origin.kind === 'demo' ? copyOf(state.project) : state.project,
});
