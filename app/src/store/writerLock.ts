/** Whether this tab may write. One tab a device does; the others look on and take over when it closes. */
export type WriterLock = { readonly held: () => boolean };

const lockName = 'kneewall-writer';

/** Asks for the right to write; `changed` is called when it is got, at once or later. */
export function askToWrite(changed: () => void): WriterLock {
  let held = false;
  if (!navigator.locks) return { held: () => false };
  void navigator.locks.request(lockName, () => {
    held = true;
    changed();
    // Held until the tab is gone: a promise that never settles.
    return new Promise<never>(() => undefined);
  });
  return { held: () => held };
}
