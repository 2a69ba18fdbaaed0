import {
  type Job,
  type JobHost,
  JobRefused,
  logFitKind,
  needsSolver,
  readRecorded,
  readWeather,
  runJob,
  type WeatherYear,
} from '@kneewall/engine';
import { type LogTable, logTextOfBytes, readLogText } from '@kneewall/project';
import { bytesOf } from '../logFiles/bytesOf.ts';
import type { FromJobs, ToJobs, ToPiece } from './messages.ts';
import { canShare, doPiece, type Loan, onAllCores } from './onAllCores.ts';

let lent: Loan = { type: 'lend', file: undefined, site: undefined, recorded: [] };

const send = (message: FromJobs): void => self.postMessage(message);

/** A file beside the project, read as the project says it is to be read. */
function blob(sha: string): WeatherYear | LogTable | undefined {
  const { file, site } = lent;
  if (!file || file.sha !== sha) return recordedYear(sha) ?? logTable(sha);
  const read = readWeather(file.text, site?.weather ?? {}, site);
  send({ type: 'read', problems: read.problems });
  if (!read.value) throw new JobRefused('The weather file cannot be read yet: look at what it lacks.');
  return read.value;
}

/** A recorded year, read as its entry says; its faults were told when it was taken. */
function recordedYear(sha: string): WeatherYear | undefined {
  const { recorded, site } = lent;
  const file = recorded.find((f) => f.sha === sha);
  const entry = Object.values(site?.recorded ?? {}).find((e) => e.blob === sha);
  if (!file || !entry) return undefined;
  const { value, problems } = readRecorded(file.text, entry, site);
  if (!value) throw new JobRefused(`${entry.name ?? 'A recorded year'} cannot be read: ${problems[0]?.mend ?? ''}`);
  return value;
}

/** Hears how far the reading of a log's file is. */
let heardOfReading: JobHost['tell'] = () => {};

/** A log, read as its entry says; the job tells what is wrong in it. */
function logTable(sha: string): LogTable | undefined {
  const file = lent.logs?.find((f) => f.sha === sha);
  const entry = Object.values(lent.logEntries ?? {}).find((e) => e.blob === sha);
  if (!file || !entry) return undefined;
  const log = logTextOfBytes(bytesOf(file.file), (encoding) => new TextDecoder(encoding));
  const { value, problems } = readLogText(log, entry, lent.site, heardOfReading);
  if (!value) throw new JobRefused(`${entry.name ?? 'A log'} cannot be read: ${problems[0]?.mend ?? ''}`);
  return value;
}

self.onmessage = ({ data }: MessageEvent<ToJobs | ToPiece>) => {
  if (data.type === 'lend') lent = data;
  else if (data.type === 'piece') doPiece(data, { blob }, (message) => self.postMessage(message));
  else void begin(data);
};

/** A job done here; the solver is fetched only for one that needs it. */
async function alone(job: Job, tell: JobHost['tell']): Promise<unknown> {
  if (!needsSolver(job)) return runJob(job, { blob, tell });
  const { loadSolver } = await import('./solver.ts');
  const solver = await loadSolver().catch(() => {
    throw new JobRefused('The solver could not be fetched: it needs the network the first time.');
  });
  return runJob(job, { blob, tell, solver });
}

/** How far a job is; of a log, reading its file is the first half and fitting the second. */
function inSteps(tell: JobHost['tell'], log: boolean): JobHost['tell'] {
  let read = 0;
  heardOfReading = (done, total) => {
    const percent = Math.floor((100 * done) / total);
    if (percent !== read) tell(percent, 200);
    read = percent;
  };
  return log ? (done, total) => tell(total + done, 2 * total) : tell;
}

async function begin({ id, key, job }: Extract<ToJobs, { type: 'start' }>): Promise<void> {
  const tell = inSteps((done, total) => send({ type: 'progress', id, key, done, total }), job.kind === logFitKind);
  try {
    const result = canShare(job, { blob }) ? await onAllCores(job, { blob }, lent, tell) : await alone(job, tell);
    send({ type: 'result', id, key, result });
  } catch (thrown) {
    const problem =
      thrown instanceof JobRefused
        ? thrown.message
        : 'The program made a mistake here; nothing of this may be relied on.';
    send({ type: 'failed', id, key, problem });
  }
}
