import type { Printed, ToPrint } from './messages.ts';

/** A plan set being made; `stop` gives it up and leaves nothing behind. */
export type Printing = { readonly done: Promise<Uint8Array<ArrayBuffer>>; stop(): void };

/** Makes a plan set beside the page, so that the page goes on. `done` rejects with plain words where it cannot be made. */
export function printApart(what: ToPrint): Printing {
  const worker = new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-print' });
  const done = new Promise<Uint8Array<ArrayBuffer>>((keep, refuse) => {
    worker.onmessage = ({ data }: MessageEvent<Printed>) =>
      data.type === 'printed' ? keep(data.bytes) : refuse(new Error(data.why));
    worker.onerror = () => refuse(new Error('What prints could not be fetched: it needs the network the first time.'));
    worker.postMessage(what);
  }).finally(() => worker.terminate());
  return { done, stop: () => worker.terminate() };
}
