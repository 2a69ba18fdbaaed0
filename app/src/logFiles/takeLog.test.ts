import { emptyProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { createSession } from '../session/session.ts';
import type { Store } from '../store/store.ts';
import type { FromReading, ReadingPort } from './readLogFile.ts';
import { takeLog } from './takeLog.ts';

const blob = 'ab'.repeat(32);
const read: FromReading = { type: 'read', problems: [], entry: { name: 'a.csv', blob } };

/** A store that writes a file when it is told to, as a disk does; and a worker that says what it is told to. */
function setUp() {
  const kept: string[] = [];
  let written = (): void => undefined;
  const store: Store = {
    list: async () => [],
    load: async () => undefined,
    append: async () => undefined,
    putBlob: async () => undefined,
    blob: async () => undefined,
    putFile: (sha, _, signal) =>
      new Promise((done, fail) => {
        signal.addEventListener('abort', () => fail(signal.reason));
        written = () => {
          kept.push(sha);
          done();
        };
      }),
    file: async () => undefined,
    reopen: () => undefined,
  };
  const session = createSession({ store, clock: () => 0 });
  session.bar(undefined);
  session.open(emptyProject, { kind: 'new' });
  let say: (message: FromReading) => void = () => undefined;
  let ended = 0;
  const open = (): ReadingPort => ({
    post: () => undefined,
    listen: (heard) => {
      say = heard;
    },
    end: () => {
      ended++;
    },
  });
  const stop = new AbortController();
  const told: number[] = [];
  const took = takeLog(new Blob(['x']), { name: 'a.csv' }, { session, store, open }, stop.signal, (d, t) =>
    told.push(d / t),
  );
  const logs = () => Object.keys(session.now().project.logs ?? {});
  return { took, stop, told, kept, logs, say: (m: FromReading) => say(m), write: () => written(), ended: () => ended };
}

const soon = () => new Promise((done) => setTimeout(done, 0));

describe('taking a log', () => {
  it('keeps the file before the project names it, and tells how far it is', async () => {
    const { took, told, kept, logs, say, write, ended } = setUp();
    say({ type: 'progress', done: 1, total: 4 });
    say(read);
    await soon();
    expect(ended()).toBe(1);
    expect(logs()).toEqual([]);
    write();
    expect((await took).how).toBe('taken');
    expect(told).toEqual([0.25]);
    expect(kept).toEqual([blob]);
    expect(logs()).toEqual([`log-${blob.slice(0, 12)}`]);
  });

  it('cancelled while it is read ends the worker, and nothing is kept', async () => {
    const { took, stop, kept, logs, say, ended } = setUp();
    stop.abort();
    say(read);
    expect((await took).how).toBe('cancelled');
    expect(ended()).toBe(1);
    expect(kept).toEqual([]);
    expect(logs()).toEqual([]);
  });

  it('cancelled while it is written undoes the write, and the project does not name it', async () => {
    const { took, stop, kept, logs, say } = setUp();
    say(read);
    await soon();
    stop.abort();
    expect((await took).how).toBe('cancelled');
    expect(kept).toEqual([]);
    expect(logs()).toEqual([]);
  });

  it('that cannot be read says so and keeps nothing', async () => {
    const { took, kept, logs, say } = setUp();
    say({ type: 'failed', why: 'file' });
    const { how, problems } = await took;
    expect(how).toBe('refused');
    expect(problems).toHaveLength(1);
    expect([kept, logs()]).toEqual([[], []]);
  });
});
