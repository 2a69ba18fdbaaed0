import { logFitKind, makeJob, type Results } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { createJobHost, type JobPort } from './jobHost.ts';
import type { FromJobs, ToJobs } from './messages.ts';

const short = makeJob('climate/year', 1, { blob: 'a' }, 'short');
const other = makeJob('climate/year', 1, { blob: 'b' }, 'short');
const long = makeJob('house/year', 1, {}, 'long');

function setUp() {
  const workers: { sent: ToJobs[]; ended: boolean; say: (message: FromJobs) => void }[] = [];
  const found: Results[] = [];
  const open = (): JobPort => {
    const worker = { sent: [] as ToJobs[], ended: false, say: (_: FromJobs): void => undefined };
    workers.push(worker);
    return {
      post: (message) => void worker.sent.push(message),
      listen: (heard) => {
        worker.say = heard;
      },
      end: () => {
        worker.ended = true;
      },
    };
  };
  const host = createJobHost(open, (results) => found.push(results));
  const started = (n: number) => workers[n]?.sent.flatMap((m) => (m.type === 'start' ? [m] : [])) ?? [];
  return { host, workers, found, started };
}

describe('jobs in a worker', () => {
  it('does quick ones before other short ones, whatever they were asked for after', () => {
    const { host, workers, started } = setUp();
    const quick = makeJob('schedule/work-plan', 1, {}, 'quick');
    host.want([short, other, quick]);
    workers[0]?.say({ type: 'result', id: 1, key: quick.key, result: 1 });
    expect(started(0).map((m) => m.key)).toEqual([quick.key, short.key]);
  });

  it('run one after another, hand on their results, and are not done twice', () => {
    const { host, workers, found, started } = setUp();
    host.want([short, other]);
    expect(started(0).map((m) => m.key)).toEqual([short.key]);
    workers[0]?.say({ type: 'progress', id: 1, key: short.key, done: 1, total: 3 });
    expect(host.now().jobs[0]).toMatchObject({ state: 'running', done: 1, total: 3 });
    workers[0]?.say({ type: 'result', id: 1, key: short.key, result: 42 });
    expect(found.at(-1)).toEqual({ [short.key]: 42 });
    expect(started(0).map((m) => m.key)).toEqual([short.key, other.key]);
    host.want([short, other]);
    expect(started(0)).toHaveLength(2);
  });

  it('of a log end their worker, with what it held of the file, before the next begins', () => {
    const { host, workers, started } = setUp();
    const log = makeJob(logFitKind, 1, {}, 'short');
    host.want([log, other]);
    workers[0]?.say({ type: 'progress', id: 1, key: log.key, done: 1, total: 3 });
    expect(workers[0]?.ended).toBe(false);
    workers[0]?.say({ type: 'result', id: 1, key: log.key, result: 1 });
    expect(workers[0]?.ended).toBe(true);
    expect(started(1).map((m) => m.key)).toEqual([other.key]);
  });

  it('that are long wait for the person, and stopping one ends its worker and drops what it still says', () => {
    const { host, workers, found, started } = setUp();
    host.want([long]);
    expect(workers).toHaveLength(0);
    host.start(long.key);
    expect(started(0)).toHaveLength(1);
    host.stop();
    expect(workers[0]?.ended).toBe(true);
    expect(host.now().jobs[0]?.state).toBe('stopped');
    workers[0]?.say({ type: 'result', id: 1, key: long.key, result: 1 });
    expect(found).toEqual([]);
  });

  it('that are asked for while another runs wait their turn, and can be let go', () => {
    const { host, workers, started } = setUp();
    host.want([short, long]);
    host.start(long.key);
    expect(host.now().jobs.map((j) => j.state)).toEqual(['running', 'waiting']);
    host.forgo(long.key);
    expect(host.now().jobs.map((j) => j.state)).toEqual(['running', 'stopped']);
    host.start(long.key);
    workers[0]?.say({ type: 'result', id: 1, key: short.key, result: 1 });
    expect(started(0).map((m) => m.key)).toEqual([short.key, long.key]);
    host.forgo(long.key);
    expect(workers[0]?.ended).toBe(true);
  });

  it('that came from another reading of the file are dropped and done again', () => {
    const { host, workers, found, started } = setUp();
    host.want([short]);
    workers[0]?.say({ type: 'result', id: 1, key: short.key, result: 'first reading' });
    host.lend({ sha: 'a', text: '…' }, { coast: 'coast' });
    expect(found.at(-1)).toEqual({});
    host.want([short]);
    expect(started(1)).toHaveLength(1);
  });

  it('that fail say why and hold up no other', () => {
    const { host, workers, started } = setUp();
    host.want([short, other]);
    workers[0]?.say({ type: 'failed', id: 1, key: short.key, problem: 'not at hand' });
    expect(host.now().jobs[0]).toMatchObject({ state: 'failed', problem: 'not at hand' });
    expect(started(0).map((m) => m.key)).toEqual([short.key, other.key]);
  });
});
