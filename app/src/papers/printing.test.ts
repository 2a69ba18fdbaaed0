import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Printed, ToPrint } from './messages.ts';
import { printApart } from './printing.ts';

/** A worker that says what it is told to. */
class Stub {
  static all: Stub[] = [];
  onmessage: ((event: { data: Printed }) => void) | undefined;
  ended = false;
  constructor() {
    Stub.all.push(this);
  }
  postMessage(): void {}
  terminate(): void {
    this.ended = true;
  }
  say(data: Printed): void {
    if (!this.ended) this.onmessage?.({ data });
  }
}

beforeEach(() => {
  Stub.all = [];
  vi.stubGlobal('Worker', Stub);
});
afterEach(() => vi.unstubAllGlobals());

const page = (done: number) =>
  ({ type: 'printing', progress: { step: 'drawing', done, total: 3, part: 'What to buy' } }) as const;
const printed = { type: 'printed', bytes: new Uint8Array(1), marks: {} } as unknown as Printed;

it('tells each page as it comes, and what was made', async () => {
  const heard: number[] = [];
  const { done } = printApart({} as ToPrint, (p) => heard.push(p.done));
  const [worker] = Stub.all;
  for (const n of [0, 1, 2]) worker?.say(page(n));
  worker?.say(printed);
  await expect(done).resolves.toMatchObject({ type: 'printed' });
  expect(heard).toEqual([0, 1, 2]);
  expect(worker?.ended).toBe(true);
});

it('ends the work itself when it is stopped, and nothing comes of it', async () => {
  const heard: number[] = [];
  const { done, stop } = printApart({} as ToPrint, (p) => heard.push(p.done));
  const [worker] = Stub.all;
  worker?.say(page(0));
  stop();
  expect(worker?.ended).toBe(true);
  worker?.say(page(1));
  worker?.say(printed);
  const first = await Promise.race([done, new Promise((after) => setTimeout(() => after('nothing'), 20))]);
  expect([heard, first]).toEqual([[0], 'nothing']);
});
