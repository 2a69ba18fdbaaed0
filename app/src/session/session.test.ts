import { emptyProject, type Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Base, Entry, Listed, LogRecord } from '../store/records.ts';
import type { Store } from '../store/store.ts';
import { appliedAll } from './changes.ts';
import { createSession, type Session } from './session.ts';

/** A store in memory that keeps exactly what it was handed. */
function memoryStore() {
  const bases = new Map<string, Base>();
  const log = new Map<string, LogRecord[]>();
  const listed = new Map<string, Listed>();
  let writes = 0;
  const store: Store = {
    putBlob: async () => undefined,
    blob: async () => undefined,
    putFile: async () => undefined,
    file: async () => undefined,
    list: async () => [...listed.values()],
    load: async (id) => {
      const base = bases.get(id);
      return base ? { base, records: log.get(id) ?? [] } : undefined;
    },
    append: async (entries: readonly Entry[]) => {
      writes++;
      for (const { base, record, listed: l } of entries) {
        if (base) bases.set(base.id, base);
        log.set(record.project, [...(log.get(record.project) ?? []), record]);
        listed.set(l.id, l);
      }
    },
    reopen: () => undefined,
  };
  return { store, listed, writes: () => writes };
}

const opened = (store: Store): Session => {
  const session = createSession({ store, clock: () => 0, device: 'here' });
  session.bar(undefined);
  return session;
};
const settled = () => new Promise((done) => setTimeout(done, 5));
const demo: Project = { ...emptyProject, about: { name: 'Tern Ledge', invented: true } };
const name = (after: string) => [{ path: ['about', 'name'], after }];

describe('a session', () => {
  it('that only looks on follows another one act by act, and stays where it is', async () => {
    const { store } = memoryStore();
    const [writes, looks] = [opened(store), opened(store)];
    writes.open(demo, { kind: 'new' });
    writes.change(name('First'));
    await settled();
    const { origin } = writes.now();
    await looks.openStored(origin.kind === 'stored' ? origin.id : '');
    looks.bar('other-tab');
    const { generation } = looks.now();
    const heard: string[] = [];
    looks.follow((event) => heard.push(event.type));
    writes.change(name('Second'));
    writes.change(name('Third'));
    writes.undo();
    await settled();
    await looks.catchUp();
    await looks.catchUp();
    expect(looks.now().project).toEqual(writes.now().project);
    expect(looks.now().history).toEqual(writes.now().history);
    expect([looks.now().generation, heard]).toEqual([generation, ['acted', 'acted', 'acted']]);
    looks.bar(undefined);
    looks.redo();
    await settled();
    expect(looks.now().project.about?.name).toBe('Third');
  });

  it('writes nothing by opening, and a copy at the first change of a demo', async () => {
    const { store, listed, writes } = memoryStore();
    const session = opened(store);
    session.open(demo, { kind: 'demo', id: 'tern-ledge' });
    await settled();
    expect(writes()).toBe(0);
    expect(session.change([{ path: ['site', 'coast'], after: 'coast' }])).toEqual([]);
    await settled();
    expect(session.now().project.about?.name).toBe('Copy of Tern Ledge');
    expect([...listed.values()].map((l) => l.name)).toEqual(['Copy of Tern Ledge']);
    expect(demo.about?.name).toBe('Tern Ledge');
  });

  it('takes back and does again after a restart', async () => {
    const { store, listed } = memoryStore();
    const session = opened(store);
    session.open(emptyProject, { kind: 'new' });
    session.change(name('one'));
    session.change(name('two'));
    session.undo();
    await settled();
    const again = opened(store);
    await again.openStored([...listed.keys()][0] ?? '');
    expect(again.now().project.about?.name).toBe('one');
    again.redo();
    expect(again.now().project.about?.name).toBe('two');
    again.undo();
    again.undo();
    expect(again.now().project.about?.name).toBe(undefined);
    expect(again.now().history.undo).toEqual([]);
  });

  it('refuses what the document refuses and stays as it was', () => {
    const session = opened(memoryStore().store);
    session.open(emptyProject, { kind: 'new' });
    const problems = session.change([{ path: ['house', 'floorArea'], after: { value: -3, known: 'measured' } }]);
    expect(problems.map((p) => p.code)).toEqual(['impossible']);
    expect(session.now().project).toEqual(emptyProject);
    expect(session.now().origin.kind).toBe('new');
  });

  it('shows what is tried out, keeps nothing of it, and is where it was when it is given up', async () => {
    const { store, writes } = memoryStore();
    const session = opened(store);
    session.open(demo, { kind: 'demo', id: 'tern-ledge' });
    // Whoever follows applies the edits as they come, as the planner does.
    let followed = demo;
    session.follow((event) => {
      if (event.type === 'opened') followed = event.project;
      else followed = appliedAll(followed, event.type === 'tried' ? event.edits : event.act.edits).value;
    });
    for (const after of ['coast', 'inland', 'coast']) {
      session.tryOut([{ path: ['site', 'coast'], after }]);
      expect([session.now().tried?.site?.coast, followed.site?.coast]).toEqual([after, after]);
    }
    expect(session.now().project).toBe(demo);
    session.tryOut([]);
    expect(session.now().tried).toBe(undefined);
    expect(followed.site?.coast).toBe(undefined);
    await settled();
    expect(writes()).toBe(0);
    expect(session.now().history.undo).toEqual([]);
  });

  it('makes one act of a change after any number of tries', () => {
    const session = opened(memoryStore().store);
    session.open(emptyProject, { kind: 'new' });
    for (const after of ['a', 'b', 'c']) session.tryOut(name(after));
    session.change(name('c'));
    expect(session.now().history.undo.length).toBe(1);
    expect(session.now().tried).toBe(undefined);
    session.undo();
    expect(session.now().project.about?.name).toBe(undefined);
  });

  it('takes no change while it is barred', () => {
    const session = opened(memoryStore().store);
    session.open(emptyProject, { kind: 'new' });
    session.bar('other-tab');
    session.change(name('x'));
    expect(session.now().project).toEqual(emptyProject);
  });

  it('is at its start after any acts and as many undos, and again where it was after as many redos', () => {
    const act = fc.oneof(
      fc.string({ minLength: 1, maxLength: 8 }).map((after) => ({ path: ['about', 'name'], after })),
      fc
        .double({ min: 1, max: 300, noNaN: true })
        .map((value) => ({ path: ['house', 'floorArea'], after: { value, known: 'measured' } })),
      fc.constant({ path: ['house', 'floorArea'], after: undefined }),
      fc.nat(5).map((n) => ({ path: ['house', 'rooms', `room-${n}`], after: { name: `Room ${n}` } })),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 50 }), (acts) => {
        const session = opened(memoryStore().store);
        session.open(emptyProject, { kind: 'new' });
        for (const a of acts) session.change([a]);
        const end = JSON.stringify(session.now().project);
        const steps = session.now().history.undo.length;
        for (let n = 0; n < steps; n++) session.undo();
        const leaves = JSON.stringify(session.now().project).replaceAll(/"(about|house|rooms)":\{\}/g, '');
        for (let n = 0; n < steps; n++) session.redo();
        return (
          /^\{"schema":1,*("house":\{,*\})?,*\}$/.test(leaves) &&
          JSON.stringify(sorted(JSON.parse(end))) === JSON.stringify(sorted(session.now().project))
        );
      }),
      { seed: 11, numRuns: 60 },
    );
  });
});

const sorted = (v: unknown): unknown =>
  v !== null && typeof v === 'object' && !Array.isArray(v)
    ? Object.fromEntries(
        Object.entries(v)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([k, x]) => [k, sorted(x)]),
      )
    : v;
