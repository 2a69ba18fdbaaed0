import type { Entry, Listed, StoredProject } from './records.ts';

/** Where work is kept. Every promise settles only after the disk has answered; a rejected one has kept nothing. */
export type Store = {
  list(): Promise<readonly Listed[]>;
  load(id: string): Promise<StoredProject | undefined>;
  /** All of it or nothing of it. Storing the same act twice is the same as storing it once. */
  append(entries: readonly Entry[]): Promise<void>;
  /** Drops a connection that may be dead; the next call opens a new one. */
  reopen(): void;
};
