import { blobHasher, clockSeen, type LogEntry, logTextOfBytes, readLogText } from '@kneewall/project';
import { bytesOf } from './bytesOf.ts';
import type { FromReading, ToReading } from './readLogFile.ts';

const send = (message: FromReading): void => self.postMessage(message);
/** A hundred steps are all that anybody sees. */
const steps = 100;

self.onmessage = ({ data: { file, entry, site } }: MessageEvent<ToReading>) => {
  try {
    let told = 0;
    const tell = (done: number, total: number): void => {
      const step = Math.floor((steps * done) / total);
      if (step === told) return;
      told = step;
      send({ type: 'progress', done, total });
    };
    const hasher = blobHasher();
    const log = logTextOfBytes(bytesOf(file), (encoding) => new TextDecoder(encoding), hasher.add);
    const { value, problems } = readLogText(log, entry, site, tell);
    send({
      type: 'read',
      problems,
      ...(value ? { entry: named(entry, hasher.name(), clockSeen(value, 0)) } : {}),
    });
  } catch (thrown) {
    send({ type: 'failed', why: thrown instanceof DOMException ? 'file' : 'program' });
  }
};

/** The entry as it is kept: named by the file's content, its clock as the log itself shows it where nobody said. */
const named = (entry: LogEntry, blob: string, seen: ReturnType<typeof clockSeen>): ReadEntry => ({
  ...entry,
  blob,
  ...(entry.clock === undefined && (seen === 'europe' || seen === 'america') ? { clock: seen } : {}),
});

type ReadEntry = LogEntry & { readonly blob: string };
