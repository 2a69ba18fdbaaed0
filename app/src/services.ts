import { demos } from '@kneewall/demos';
import { emptyProject, openProject, type Problem, type Project, type System } from '@kneewall/project';
import { createContext, useContext, useSyncExternalStore } from 'react';
import { createJobHost, type JobHost, type JobPort, type JobsState } from './jobs/jobHost.ts';
import type { LogFile, WeatherText } from './jobs/messages.ts';
import { createView, type View, type ViewState } from './look/view.ts';
import { createPlanner, type Planner, type PlannerState, type PlanPort } from './planner/planner.ts';
import { createSession, type Session, type SessionState } from './session/session.ts';
import { recalled, remember } from './store/openHere.ts';
import type { Store } from './store/store.ts';

/** Everything the screens stand on. */
export type Services = {
  readonly session: Session;
  readonly planner: Planner;
  readonly jobs: JobHost;
  readonly view: View;
  readonly store: Store;
};

export function createServices(store: Store, port: PlanPort, openJobs: () => JobPort): Services {
  const session = createSession({ store, clock: () => Date.now() });
  const view = createView(session);
  const planner = createPlanner(session, port, () => view.now().units);
  let units: System = view.now().units;
  view.subscribe(() => {
    if (view.now().units === units) return;
    units = view.now().units;
    planner.setUnits(units);
  });
  session.follow(() => remember(session.now().origin));
  const jobs = createJobHost(openJobs, planner.setResults);
  let wanted = planner.now().wanted;
  planner.subscribe(() => {
    if (planner.now().wanted === wanted) return;
    wanted = planner.now().wanted;
    // Once the plan they come with has been drawn: their worker may not hold up the first drawing.
    setTimeout(() => jobs.want(wanted), 0);
  });
  followWeather(session, jobs, store);
  followLogs(session, jobs, store);
  return { session, planner, jobs, view, store };
}

/** Whenever the project's site moves, lends the jobs its weather file and recorded years as the store has them. */
function followWeather(session: Session, jobs: JobHost, store: Store): void {
  let seen: Project['site'];
  let file: WeatherText | undefined;
  let recorded: readonly WeatherText[] = [];
  session.subscribe(() => {
    const { site } = session.now().project;
    if (site === seen) return;
    seen = site;
    const sha = site?.weather?.blob;
    const years = Object.values(site?.recorded ?? {}).flatMap(({ blob }) => (blob === undefined ? [] : [blob]));
    const known = [...(file ? [file] : []), ...recorded];
    const textOf = async (name: string): Promise<WeatherText | undefined> => {
      const kept = known.find((f) => f.sha === name);
      if (kept) return kept;
      const text = await store.blob(name).catch(() => undefined);
      return text === undefined ? undefined : { sha: name, text };
    };
    const same = sha === file?.sha && years.every((name) => recorded.some((f) => f.sha === name));
    if (same) return jobs.lend(file, sha === undefined && years.length === 0 ? undefined : site, recorded);
    void Promise.all([sha === undefined ? undefined : textOf(sha), ...years.map(textOf)]).then(([main, ...rest]) => {
      if (session.now().project.site !== site) return;
      file = main;
      recorded = rest.filter((f) => f !== undefined);
      jobs.lend(file, site, recorded);
    });
  });
}

/** Whenever the project's logs move, lends the jobs their files as the store has them: handles, whose bytes only the job fetches. */
function followLogs(session: Session, jobs: JobHost, store: Store): void {
  let seen: Project['logs'];
  let kept: readonly LogFile[] = [];
  session.subscribe(() => {
    const { logs } = session.now().project;
    if (logs === seen) return;
    seen = logs;
    const named = [...new Set(Object.values(logs ?? {}).flatMap(({ blob }) => (blob === undefined ? [] : [blob])))];
    const fileOf = async (sha: string): Promise<readonly LogFile[]> => {
      const known = kept.find((f) => f.sha === sha);
      const file = known?.file ?? (await store.file(sha).catch(() => undefined));
      return file === undefined ? [] : [{ sha, file }];
    };
    void Promise.all(named.map(fileOf)).then((files) => {
      if (session.now().project.logs !== logs) return;
      kept = files.flat();
      jobs.lendLogs(kept, logs);
    });
  });
}

/** Opens what this tab had open, else what was changed last on this device, else the first demo. Writes nothing. */
export async function openFirst({ session, store }: Services): Promise<void> {
  const here = recalled();
  const listed = await store.list().catch(() => []);
  const latest = listed.toSorted((a, b) => b.changed - a.changed)[0];
  if (here?.kind === 'new') return session.open(emptyProject, { kind: 'new' });
  if (here?.kind === 'demo' && (await openDemo(session, here.id))) return;
  const id = here?.kind === 'stored' ? here.id : latest?.id;
  if (id !== undefined) {
    await session.openStored(id);
    if (session.now().generation > 0) return;
  }
  await openDemo(session, demos[0]?.id ?? '');
}

export async function openDemo(session: Session, id: string): Promise<boolean> {
  const demo = demos.find((d) => d.id === id);
  if (!demo) return false;
  const opened = openProject(JSON.stringify(await demo.load()));
  if (opened.ok) session.open(opened.project, { kind: 'demo', id });
  return opened.ok;
}

/** Opens the text of a file. What is refused comes back, and the open project is left as it was. */
export function openText(session: Session, text: string, name: string): readonly Problem[] {
  const opened = openProject(text);
  if (!opened.ok) return opened.problems;
  session.open(opened.project, { kind: 'file', name });
  return [];
}

export const ServicesContext = createContext<Services | undefined>(undefined);

export function useServices(): Services {
  const services = useContext(ServicesContext);
  if (!services) throw new Error('assert: a screen stands outside the app');
  return services;
}

/** A part of the session; the screen is drawn again only when that part is another one. */
export function useSession<T>(part: (state: SessionState) => T): T {
  const { session } = useServices();
  return useSyncExternalStore(session.subscribe, () => part(session.now()));
}

export function usePlanner<T>(part: (state: PlannerState) => T): T {
  const { planner } = useServices();
  return useSyncExternalStore(planner.subscribe, () => part(planner.now()));
}

export function useJobs<T>(part: (state: JobsState) => T): T {
  const { jobs } = useServices();
  return useSyncExternalStore(jobs.subscribe, () => part(jobs.now()));
}

export function useView<T>(part: (state: ViewState) => T): T {
  const { view } = useServices();
  return useSyncExternalStore(view.subscribe, () => part(view.now()));
}

export const useUnits = (): System => useView((v) => v.units);
