import '../withoutEval.ts';
import { JobRefused, readWeather, runJob, type WeatherYear } from '@kneewall/engine';
import type { FromJobs, ToJobs, ToPiece } from './messages.ts';
import { canShare, doPiece, type Loan, onAllCores } from './onAllCores.ts';

let lent: Loan = { type: 'lend', file: undefined, site: undefined };

const send = (message: FromJobs): void => self.postMessage(message);

/** A file beside the project, read as the project says it is to be read. */
function blob(sha: string): WeatherYear | undefined {
  const { file, site } = lent;
  if (!file || file.sha !== sha) return undefined;
  const read = readWeather(file.text, site?.weather ?? {}, site);
  send({ type: 'read', problems: read.problems });
  if (!read.value) throw new JobRefused('The weather file cannot be read yet: look at what it lacks.');
  return read.value;
}

self.onmessage = ({ data }: MessageEvent<ToJobs | ToPiece>) => {
  if (data.type === 'lend') lent = data;
  else if (data.type === 'piece') doPiece(data, { blob }, (message) => self.postMessage(message));
  else void begin(data);
};

async function begin({ id, key, job }: Extract<ToJobs, { type: 'start' }>): Promise<void> {
  const tell = (done: number, total: number): void => send({ type: 'progress', id, key, done, total });
  try {
    const result = canShare(job, { blob }) ? await onAllCores(job, { blob }, lent, tell) : runJob(job, { blob, tell });
    send({ type: 'result', id, key, result });
  } catch (thrown) {
    const problem =
      thrown instanceof JobRefused
        ? thrown.message
        : 'The program made a mistake here; nothing of this may be relied on.';
    send({ type: 'failed', id, key, problem });
  }
}
