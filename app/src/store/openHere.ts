import type { Origin } from '../session/session.ts';

const key = 'kneewall.open';

/** Notes for this tab alone what it has open, so that a reload finds it. Nothing of the project is in it. */
export function remember(origin: Origin): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(origin));
  } catch {
    // Without it a reload opens what was changed last, which is nearly always the same.
  }
}

/** What this tab had open before a reload. */
export function recalled(): Origin | undefined {
  try {
    const noted: unknown = JSON.parse(sessionStorage.getItem(key) ?? 'null');
    return isOrigin(noted) ? noted : undefined;
  } catch {
    return undefined;
  }
}

const isOrigin = (noted: unknown): noted is Origin => noted !== null && typeof noted === 'object' && 'kind' in noted;
