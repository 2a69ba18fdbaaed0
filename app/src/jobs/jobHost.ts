import type { Job, Results } from '@kneewall/engine';
import type { Problem, Project } from '@kneewall/project';
import type { FromJobs, ToJobs, WeatherText } from './messages.ts';

export type JobView = {
  readonly job: Job;
  readonly state: 'running' | 'offered' | 'failed' | 'stopped';
  readonly done: number;
  readonly total: number;
  /** Why it failed, in words. */
  readonly problem: string;
};

export type JobsState = {
  readonly jobs: readonly JobView[];
  /** What was found wrong with the weather file. */
  readonly weather: readonly Problem[];
};

/** One worker, from its first job to its end. */
export type JobPort = { post(message: ToJobs): void; listen(heard: (message: FromJobs) => void): void; end(): void };

export type JobHost = {
  now(): JobsState;
  subscribe(changed: () => void): () => void;
  /** What the plan wants to know now. Short jobs start by themselves, long ones are offered. */
  want(jobs: readonly Job[]): void;
  /** What jobs may borrow. Results that came from other loans are dropped. */
  lend(file: WeatherText | undefined, site: Project['site']): void;
  start(key: string): void;
  /** Ends the worker that does it: a computation cannot be asked to stop. */
  stop(): void;
};

/** Does jobs one at a time in a worker and hands every result on. */
export function createJobHost(open: () => JobPort, found: (results: Results) => void): JobHost {
  const listeners = new Set<() => void>();
  let state: JobsState = { jobs: [], weather: [] };
  let results: Results = {};
  let loan: Extract<ToJobs, { type: 'lend' }> = { type: 'lend', file: undefined, site: undefined };
  let port: JobPort | undefined;
  let id = 0;
  const set = (next: Partial<JobsState>) => {
    state = { ...state, ...next };
    for (const l of listeners) l();
  };
  const update = (key: string, next: Partial<JobView>) =>
    set({ jobs: state.jobs.map((j) => (j.job.key === key ? { ...j, ...next } : j)) });
  const hear = (message: FromJobs) => {
    if (message.type === 'read') return set({ weather: message.problems });
    if (message.id !== id) return;
    if (message.type === 'progress') update(message.key, { done: message.done, total: message.total });
    if (message.type === 'failed') update(message.key, { state: 'failed', problem: message.problem });
    if (message.type === 'result') {
      results = { ...results, [message.key]: message.result };
      set({ jobs: state.jobs.filter((j) => j.job.key !== message.key) });
      found(results);
    }
    if (message.type !== 'progress') next();
  };
  const begin = (job: Job) => {
    if (!port) {
      port = open();
      port.listen(hear);
    }
    id++;
    update(job.key, { state: 'running', done: 0, total: 0, problem: '' });
    port.post(loan);
    port.post({ type: 'start', id, key: job.key, job });
  };
  const next = () => {
    if (state.jobs.some((j) => j.state === 'running')) return;
    const due = state.jobs.find((j) => j.state === 'offered' && j.job.cost === 'short');
    if (due) begin(due.job);
  };
  const end = () => {
    port?.end();
    port = undefined;
    id++;
  };
  return {
    now: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    want: (jobs) => {
      const wanted = new Set(jobs.map((j) => j.key));
      if (state.jobs.some((j) => j.state === 'running' && !wanted.has(j.job.key))) end();
      const known = new Map(state.jobs.map((j) => [j.job.key, j]));
      const fresh = (job: Job): JobView => ({ job, state: 'offered', done: 0, total: 0, problem: '' });
      const views = jobs.filter((j) => !(j.key in results)).map((job) => known.get(job.key) ?? fresh(job));
      if (views.length > 0 || state.jobs.length > 0) set({ jobs: views });
      next();
    },
    lend: (file, site) => {
      if (file === loan.file && site === loan.site) return;
      loan = { type: 'lend', file, site };
      end();
      const had = Object.keys(results).length > 0;
      results = {};
      if (state.jobs.length > 0 || state.weather.length > 0)
        set({ jobs: state.jobs.map((j) => ({ ...j, state: 'offered' })), weather: [] });
      if (had) found(results);
      next();
    },
    start: (key) => {
      const view = state.jobs.find((j) => j.job.key === key);
      if (view && !state.jobs.some((j) => j.state === 'running')) begin(view.job);
    },
    stop: () => {
      end();
      set({ jobs: state.jobs.map((j) => (j.state === 'running' ? { ...j, state: 'stopped' } : j)) });
    },
  };
}
