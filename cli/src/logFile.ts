import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import {
  blobHasher,
  type LogBytes,
  type LogEntry,
  type LogPlan,
  type LogRead,
  logTextOfBytes,
  type Project,
  planLog,
  readLogText,
} from '@kneewall/project';

type Site = Project['site'];
type Tell = (done: number, total: number) => void;

const decoderOf = (encoding: string) => new TextDecoder(encoding);

/** Lends a file's bytes, fetched from the disk as they are read. Throws what the system says where it cannot be opened. */
function withBytes<T>(path: string, use: (file: LogBytes) => T): T {
  const opened = openSync(path, 'r');
  try {
    return use({
      size: fstatSync(opened).size,
      bytes: (from, to) => {
        const piece = new Uint8Array(to - from);
        return piece.subarray(0, readSync(opened, piece, 0, to - from, from));
      },
    });
  } finally {
    closeSync(opened);
  }
}

/** How a log file would be read, by its beginning and end. */
export const planLogAt = (path: string, entry: LogEntry, site: Site): LogPlan =>
  withBytes(path, (file) => planLog(logTextOfBytes(file, decoderOf).ends, entry, site));

/** Reads a log file through without holding it. `blob`: its SHA-256, by which it is known beside a project. */
export function readLogAt(path: string, entry: LogEntry, site: Site, tell?: Tell): LogRead & { readonly blob: string } {
  const hasher = blobHasher();
  const read = withBytes(path, (file) => readLogText(logTextOfBytes(file, decoderOf, hasher.add), entry, site, tell));
  return { ...read, blob: hasher.name() };
}
