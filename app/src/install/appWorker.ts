/** Where the app stands with working without a network. */
export type AppState = 'starting' | 'ready' | 'update' | 'absent';

export type AppWorker = {
  now(): AppState;
  subscribe(changed: () => void): () => void;
  /** Swaps in the version that waits, and loads the page anew. Only ever on a tap. */
  update(): void;
};

/** Registers the worker that keeps the app on this device. */
export function startAppWorker(): AppWorker {
  const listeners = new Set<() => void>();
  let state: AppState = 'starting';
  let registration: ServiceWorkerRegistration | undefined;
  const set = (next: AppState) => {
    state = next;
    for (const l of listeners) l();
  };
  const look = () => {
    if (registration?.waiting) set('update');
    else if (registration?.active) set('ready');
  };
  const watch = (worker: ServiceWorker | null) => worker?.addEventListener('statechange', look);
  const start = async () => {
    if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return set('absent');
    try {
      registration = await navigator.serviceWorker.register('/sw.js');
      watch(registration.installing);
      registration.addEventListener('updatefound', () => watch(registration?.installing ?? null));
      await navigator.serviceWorker.ready;
      look();
    } catch {
      set('absent');
    }
  };
  void start();
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    update: () => {
      navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true });
      registration?.waiting?.postMessage({ type: 'SKIP_WAITING' });
    },
  };
}
