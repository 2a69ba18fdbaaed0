import { type Job, logFitKind, type Results, recordedKind } from '@kneewall/engine';
import type { Problem, Project } from '@kneewall/project';
import type { Port } from '../workerPort.ts';
import type { FromJobs, LogFile, ToJobs, WeatherText } from './messages.ts';

export type JobView = {
  readonly job: Job;
  /** `waiting`: asked for, and done after what runs now. */
  readonly state: 'running' | 'waiting' | 'offered' | 'failed' | 'stopped';
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
export type JobPort = Port<ToJobs, FromJobs>;

export type JobHost = {
  now(): JobsState;
  subscribe(changed: () => void): () => void;
  /** What the plan wants to know now. Short jobs start by themselves, long ones are offered. */
  want(jobs: readonly Job[]): void;
  /** What jobs may borrow. Results that came from other loans are dropped. */
  lend(file: WeatherText | undefined, site: Project['site'], recorded?: readonly WeatherText[]): void;
  /** Logs and how each is read. Nothing else hangs on them, so no result is dropped. */
  lendLogs(logs: readonly LogFile[], entries: Project['logs']): void;
  start(key: string): void;
  /** Ends the worker that does what runs now, since a computation cannot be asked to stop. */
  stop(): void;
  /** Stops a job, whether it runs, waits or would start by itself. */
  forgo(key: string): void;
};

type Loan = Extract<ToJobs, { type: 'lend' }>;

/** Does jobs one at a time in a worker and hands every result on. */
export const createJobHost = (open: () => JobPort, found: (results: Results) => void): JobHost =>
  new OneAtATime(open, found);

const fresh = (job: Job): JobView => ({ job, state: 'offered', done: 0, total: 0, problem: '' });

class OneAtATime implements JobHost {
  private readonly listeners = new Set<() => void>();
  private readonly open: () => JobPort;
  private readonly found: (results: Results) => void;
  private state: JobsState = { jobs: [], weather: [] };
  private results: Results = {};
  private loan: Loan = { type: 'lend', file: undefined, site: undefined, recorded: [] };
  private logs: Pick<Loan, 'logs' | 'logEntries'> = {};
  private port: JobPort | undefined;
  /** Of the job that runs; what an ended worker still says carries an older one. */
  private id = 0;

  constructor(open: () => JobPort, found: (results: Results) => void) {
    this.open = open;
    this.found = found;
  }

  now = (): JobsState => this.state;

  subscribe = (changed: () => void) => {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  };

  want = (jobs: readonly Job[]): void => {
    const wanted = new Set(jobs.map((j) => j.key));
    if (this.state.jobs.some((j) => j.state === 'running' && !wanted.has(j.job.key))) this.end();
    const known = new Map(this.state.jobs.map((j) => [j.job.key, j]));
    const views = jobs.filter((j) => !(j.key in this.results)).map((job) => known.get(job.key) ?? fresh(job));
    if (views.length > 0 || this.state.jobs.length > 0) this.set({ jobs: views });
    this.next();
  };

  lend = (file: WeatherText | undefined, site: Project['site'], recorded: readonly WeatherText[] = []): void => {
    if (file === this.loan.file && site === this.loan.site) return;
    this.loan = { type: 'lend', file, site, recorded };
    this.end();
    const had = Object.keys(this.results).length > 0;
    this.results = {};
    if (this.state.jobs.length > 0 || this.state.weather.length > 0)
      this.set({ jobs: this.state.jobs.map((j) => fresh(j.job)), weather: [] });
    if (had) this.found(this.results);
    this.next();
  };

  lendLogs = (logs: readonly LogFile[], entries: Project['logs']): void => {
    this.logs = { logs, logEntries: entries };
    for (const { job, state } of this.state.jobs)
      if (job.kind === logFitKind && state === 'failed') this.update(job.key, fresh(job));
    this.next();
  };

  start = (key: string): void => {
    if (this.state.jobs.some((j) => j.job.key === key)) this.update(key, { state: 'waiting', problem: '' });
    this.next();
  };

  stop = (): void => {
    this.end();
    const stopped = (j: JobView): JobView => (j.state === 'running' ? { ...j, state: 'stopped' } : j);
    this.set({ jobs: this.state.jobs.map(stopped) });
    this.next();
  };

  forgo = (key: string): void => {
    const state = this.state.jobs.find((j) => j.job.key === key)?.state;
    if (state === 'waiting' || state === 'offered') this.update(key, { state: 'stopped' });
    else if (state === 'running') this.stop();
  };

  private set(next: Partial<JobsState>): void {
    this.state = { ...this.state, ...next };
    for (const changed of this.listeners) changed();
  }

  private update(key: string, next: Partial<JobView>): void {
    this.set({ jobs: this.state.jobs.map((j) => (j.job.key === key ? { ...j, ...next } : j)) });
  }

  private isRunning = (): boolean => this.state.jobs.some((j) => j.state === 'running');

  private hear = (message: FromJobs): void => {
    if (message.type === 'read') this.set({ weather: message.problems });
    else if (message.id === this.id) this.heard(message);
  };

  private heard(message: Exclude<FromJobs, { type: 'read' }>): void {
    const { key } = message;
    const { kind } = this.state.jobs.find((j) => j.job.key === key)?.job ?? {};
    // What a worker held of a log's file goes with it, at once and as a whole.
    if (message.type !== 'progress' && kind === logFitKind) this.end();
    if (message.type === 'progress') this.update(key, { done: message.done, total: message.total });
    if (message.type === 'failed') this.update(key, { state: 'failed', problem: message.problem });
    if (message.type === 'result') {
      this.results = { ...this.results, [key]: message.result };
      this.set({ jobs: this.state.jobs.filter((j) => j.job.key !== key) });
      this.found(this.results);
    }
    this.next();
  }

  private begin(job: Job): void {
    if (!this.port) {
      this.port = this.open();
      this.port.listen(this.hear);
    }
    this.id++;
    this.update(job.key, { ...fresh(job), state: 'running' });
    const recorded = job.kind === recordedKind ? this.loan.recorded : [];
    this.port.post({ ...this.loan, recorded, ...(job.kind === logFitKind ? this.logs : {}) });
    this.port.post({ type: 'start', id: this.id, key: job.key, job });
  }

  /** Short jobs start by themselves: what a reading in hand waits for, then quick ones; what a person asked for comes before all. */
  private next(): void {
    if (this.isRunning()) return;
    const offered = (cost: Job['cost'], kind = '') =>
      this.state.jobs.find((j) => j.state === 'offered' && j.job.cost === cost && j.job.kind.startsWith(kind));
    const due =
      this.state.jobs.find((j) => j.state === 'waiting') ??
      offered('short', 'commissioning/') ??
      offered('quick') ??
      offered('short');
    if (due) this.begin(due.job);
  }

  private end(): void {
    this.port?.end();
    this.port = undefined;
    this.id++;
  }
}
