/** Whether the browser has promised not to empty its storage by itself. */
export type Keeping = 'unasked' | 'kept' | 'may-be-emptied';

export type KeepingAsk = { now(): Keeping; subscribe(changed: () => void): () => void; ask(): void };

/** Asks the browser once to keep what is stored; the answer is shown, whatever it is. */
export function keepingAsk(): KeepingAsk {
  const listeners = new Set<() => void>();
  let state: Keeping = 'unasked';
  let asked = false;
  const set = (next: Keeping) => {
    state = next;
    for (const l of listeners) l();
  };
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    ask: () => {
      if (asked) return;
      asked = true;
      const answer = navigator.storage?.persist?.() ?? Promise.resolve(false);
      answer.then((kept) => set(kept ? 'kept' : 'may-be-emptied')).catch(() => set('may-be-emptied'));
    },
  };
}
