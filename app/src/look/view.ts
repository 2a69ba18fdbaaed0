import type { System } from '@kneewall/project';
import type { Session } from '../session/session.ts';

export const themes = ['light', 'dark', 'sunlight'] as const;
export type Theme = (typeof themes)[number];
export type ViewState = { readonly theme: Theme; readonly units: System };

/** How things are shown on this device: the theme, and whose units. */
export type View = {
  now(): ViewState;
  subscribe(changed: () => void): () => void;
  setTheme(theme: Theme): void;
  /** Kept in the project where it may be changed; for a demo and for an onlooker only until another is opened. */
  setUnits(units: System): void;
};

const themeKey = 'kneewall.theme';

export function createView(session: Session): View {
  const listeners = new Set<() => void>();
  let override: System | undefined;
  let generation = session.now().generation;
  const units = (): System => override ?? (session.now().project.site?.units === 'si' ? 'si' : 'us');
  let state: ViewState = { theme: keptTheme(), units: units() };
  const refresh = (theme: Theme = state.theme) => {
    if (theme === state.theme && units() === state.units) return;
    state = { theme, units: units() };
    for (const l of listeners) l();
  };
  session.subscribe(() => {
    if (session.now().generation !== generation) override = undefined;
    generation = session.now().generation;
    refresh();
  });
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    setTheme: (theme) => {
      keepTheme(theme);
      refresh(theme);
    },
    setUnits: (wanted) => {
      const { barred, origin } = session.now();
      const mayWrite = !barred && origin.kind !== 'demo';
      override = mayWrite ? undefined : wanted;
      if (mayWrite) session.change([{ path: ['site', 'units'], after: wanted }]);
      refresh();
    },
  };
}

function keptTheme(): Theme {
  const kept = themes.find((t) => t === read(themeKey));
  return kept ?? (globalThis.matchMedia?.('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
}

const keepTheme = (theme: Theme): void => {
  try {
    localStorage.setItem(themeKey, theme);
  } catch {
    // A browser that keeps nothing still shows the theme until it is closed.
  }
};

function read(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
