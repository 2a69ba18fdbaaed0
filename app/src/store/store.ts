import type { Entry, Listed, StoredProject } from './records.ts';

/** Where work is kept. Every promise settles only after the disk has answered; a rejected one has kept nothing. */
export type Store = {
  list(): Promise<readonly Listed[]>;
  load(id: string): Promise<StoredProject | undefined>;
  /** All of it or nothing of it. Storing the same act twice is the same as storing it once. */
  append(entries: readonly Entry[]): Promise<void>;
  /** A file that lives beside projects, by its SHA-256. Never in one transaction with a change. */
  putBlob(sha: string, text: string): Promise<void>;
  blob(sha: string): Promise<string | undefined>;
  /** A large file beside projects, which is never in memory as a whole. Where `signal` aborts before it is written, nothing is kept. */
  putFile(sha: string, file: Blob, signal: AbortSignal): Promise<void>;
  file(sha: string): Promise<Blob | undefined>;
  /** Drops a connection that may be dead; the next call opens a new one. */
  reopen(): void;
};
