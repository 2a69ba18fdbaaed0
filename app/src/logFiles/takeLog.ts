import type { LogEntry, Problem } from '@kneewall/project';
import type { Session } from '../session/session.ts';
import type { Store } from '../store/store.ts';
import { type ReadingPort, readLogFile } from './readLogFile.ts';

type Into = { readonly session: Session; readonly store: Store; readonly open?: () => ReadingPort };

/** How taking a log ended. Only a taken one has left anything in store and project. */
export type TookLog = { readonly how: 'taken' | 'refused' | 'cancelled'; readonly problems: readonly Problem[] };

/** Reads a log file apart from the page, keeps the file, and only then names it in the project: all of it or nothing. */
export async function takeLog(
  file: Blob,
  entry: LogEntry,
  { session, store, open }: Into,
  signal: AbortSignal,
  tell: (done: number, total: number) => void,
): Promise<TookLog> {
  const { site } = session.now().project;
  try {
    const read = await readLogFile({ file, entry, site }, signal, tell, open);
    if (!read.entry) return { how: 'refused', problems: read.problems };
    const { blob } = read.entry;
    await store.putFile(blob, file, signal);
    if (signal.aborted) return { how: 'cancelled', problems: [] };
    const problems = session.change([{ path: ['logs', `log-${blob.slice(0, 12)}`], after: read.entry }]);
    if (problems.length > 0) return { how: 'refused', problems };
    return { how: 'taken', problems: read.problems };
  } catch {
    if (signal.aborted) return { how: 'cancelled', problems: [] };
    return { how: 'refused', problems: [notKept(entry.name ?? '')] };
  }
}

const notKept = (name: string): Problem => ({
  code: 'too-large',
  path: [name],
  grade: 'refused',
  mend: 'The log could not be read through or not be kept on this device, so it was not taken. Look whether the file is still where it was and has not changed, and choose it again.',
});
