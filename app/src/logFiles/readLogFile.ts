import type { LogEntry, Problem, Project } from '@kneewall/project';
import { type Port, portOf } from '../workerPort.ts';

/** What the worker that reads a log file is told, once. */
export type ToReading = { readonly file: Blob; readonly entry: LogEntry; readonly site: Project['site'] };

/** What it says: how many bytes it has read; then what came out, with an entry where the log can be taken. */
export type FromReading =
  | { readonly type: 'progress'; readonly done: number; readonly total: number }
  | { readonly type: 'read'; readonly problems: readonly Problem[]; readonly entry?: LogEntry & { blob: string } }
  | { readonly type: 'failed'; readonly why: 'file' | 'program' };

export type LogFileRead = Extract<FromReading, { type: 'read' }>;

/** One worker, from its file to its end. */
export type ReadingPort = Port<ToReading, FromReading>;

const readingPort = (): ReadingPort =>
  portOf(new Worker(new URL('./readLog.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-log' }), {
    type: 'failed',
    why: 'program',
  });

/** Reads a log file in a worker of its own, which ends with the file or with `signal`: then nothing of it is left. */
export function readLogFile(
  given: ToReading,
  signal: AbortSignal,
  tell: (done: number, total: number) => void,
  open: () => ReadingPort = readingPort,
): Promise<LogFileRead> {
  const port = open();
  return new Promise<LogFileRead>((resolve, reject) => {
    const stop = (): void => reject(signal.reason);
    if (signal.aborted) return stop();
    signal.addEventListener('abort', stop, { once: true });
    port.listen((message) => {
      if (signal.aborted) return;
      if (message.type === 'progress') tell(message.done, message.total);
      else if (message.type === 'read') resolve(message);
      else reject(new Error(message.why));
    });
    port.post(given);
  }).finally(() => port.end());
}
