import '../withoutEval.ts';
import { JobRefused, readWeather, runJob, type WeatherYear } from '@kneewall/engine';
import type { FromJobs, ToJobs } from './messages.ts';

let lent: Extract<ToJobs, { type: 'lend' }> = { type: 'lend', file: undefined, site: undefined };

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

self.onmessage = ({ data }: MessageEvent<ToJobs>) => {
  if (data.type === 'lend') {
    lent = data;
    return;
  }
  const { id, key, job } = data;
  try {
    const result = runJob(job, { blob, tell: (done, total) => send({ type: 'progress', id, key, done, total }) });
    send({ type: 'result', id, key, result });
  } catch (thrown) {
    const problem =
      thrown instanceof JobRefused
        ? thrown.message
        : 'The program made a mistake here; nothing of this may be relied on.';
    send({ type: 'failed', id, key, problem });
  }
};
