import type { Entry } from './records.ts';
import type { Store } from './store.ts';

export type Saving = {
  /** Acts that are in memory only, the oldest first. */
  readonly waiting: readonly Entry[];
  /** The store refused or lost the last attempt. */
  readonly failing: boolean;
  /** A disk or quota that is full needs the person; a lost connection mends itself. */
  readonly full: boolean;
};

export type Saver = {
  push(entry: Entry): void;
  /** Tries at once, whatever the pause between attempts. */
  hurry(): void;
  now(): Saving;
};

const firstPause = 150;
const longestPause = 5000;

/**
 * Keeps acts in memory until the store has them for good, in order, however often it fails. Nothing is dropped and
 * nothing is called saved before the store has said so.
 */
export function createSaver(store: Store, changed: () => void, pause = pauseFor): Saver {
  let saving: Saving = { waiting: [], failing: false, full: false };
  let running = false;
  let wake: (() => void) | undefined;
  const set = (next: Saving) => {
    saving = next;
    changed();
  };
  const run = async () => {
    running = true;
    let failures = 0;
    while (saving.waiting.length > 0) {
      const batch = saving.waiting;
      try {
        await store.append(batch);
        failures = 0;
        set({ waiting: saving.waiting.slice(batch.length), failing: false, full: false });
      } catch (error) {
        failures++;
        store.reopen();
        set({ ...saving, failing: true, full: (error as { name?: string } | null)?.name === 'QuotaExceededError' });
        await Promise.race([
          pause(Math.min(longestPause, firstPause * 2 ** (failures - 1))),
          new Promise<void>((r) => {
            wake = r;
          }),
        ]);
      }
    }
    running = false;
  };
  const kick = () => {
    if (!running) void run();
  };
  return {
    push: (entry) => {
      set({ ...saving, waiting: [...saving.waiting, entry] });
      kick();
    },
    hurry: () => {
      wake?.();
      kick();
    },
    now: () => saving,
  };
}

const pauseFor = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
