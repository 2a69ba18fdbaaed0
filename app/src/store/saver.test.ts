import { describe, expect, it } from 'vitest';
import { type Entry, recordOf } from './records.ts';
import { createSaver } from './saver.ts';
import type { Store } from './store.ts';

const entry = (number: number): Entry => ({
  record: recordOf('p', {
    number,
    kind: 'do',
    edits: [{ device: 'd', seq: number, path: ['about', 'name'], before: undefined, after: `n${number}` }],
  }),
  listed: { id: 'p', name: 'P', changed: number },
});

/** A store that fails at the attempts named, and keeps what it took. */
function faultyStore(failsAt: ReadonlySet<number>, error: unknown = new Error('connection lost')) {
  const kept: number[] = [];
  let attempt = 0;
  let reopened = 0;
  const store: Store = {
    putBlob: async () => undefined,
    blob: async () => undefined,
    putFile: async () => undefined,
    file: async () => undefined,
    list: async () => [],
    load: async () => undefined,
    append: async (entries) => {
      attempt++;
      if (failsAt.has(attempt)) throw error;
      kept.push(...entries.map((e) => e.record.number));
    },
    reopen: () => {
      reopened++;
    },
  };
  return { store, kept, reopens: () => reopened };
}

const settled = () => new Promise((done) => setTimeout(done, 20));

describe('what is typed while the store fails', () => {
  it.each([[[1]], [[2]], [[1, 2, 3]], [[1, 3, 5, 7]]])(
    'is all kept in order when attempts %j fail',
    async (failing) => {
      const { store, kept, reopens } = faultyStore(new Set(failing));
      const saver = createSaver(
        store,
        () => undefined,
        () => Promise.resolve(),
      );
      for (let n = 1; n <= 5; n++) {
        saver.push(entry(n));
        await Promise.resolve();
      }
      await settled();
      expect(kept).toEqual([1, 2, 3, 4, 5]);
      expect(reopens()).toBeGreaterThanOrEqual(1);
      expect(saver.now()).toEqual({ waiting: [], failing: false, full: false });
    },
  );

  it('counts as waiting until the store has answered, and says when the disk is full', async () => {
    const quota = Object.assign(new Error('full'), { name: 'QuotaExceededError' });
    const { store } = faultyStore(new Set([1, 2, 3, 4, 5, 6, 7, 8, 9]), quota);
    const saver = createSaver(
      store,
      () => undefined,
      () => new Promise(() => undefined),
    );
    saver.push(entry(1));
    expect(saver.now().waiting).toHaveLength(1);
    await settled();
    expect(saver.now()).toMatchObject({ failing: true, full: true });
    expect(saver.now().waiting).toHaveLength(1);
  });
});
