import type { PrintProgress, SheetMarks } from '@kneewall/documents/planSet';
import type { Printed, ToPrint } from './messages.ts';

/** A plan set with the marks of its sheets; without bytes where only the marks were asked for. */
export type Papers = { readonly bytes?: Uint8Array<ArrayBuffer>; readonly marks: SheetMarks };

/** A plan set being made; `stop` gives it up and leaves nothing behind. */
export type Printing = { readonly done: Promise<Papers>; stop(): void };

/** Makes a plan set beside the page, so that the page goes on, and tells how far it is. `done` rejects with plain words where it cannot be made. */
export function printApart(what: ToPrint, tell: (progress: PrintProgress) => void = () => {}): Printing {
  const worker = new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-print' });
  const done = new Promise<Papers>((keep, refuse) => {
    worker.onmessage = ({ data }: MessageEvent<Printed>) =>
      data.type === 'failed'
        ? refuse(new Error(data.why))
        : data.type === 'printing'
          ? tell(data.progress)
          : keep(data);
    worker.onerror = () => refuse(new Error('What prints could not be fetched: it needs the network the first time.'));
    worker.postMessage(what);
  }).finally(() => worker.terminate());
  return { done, stop: () => worker.terminate() };
}
