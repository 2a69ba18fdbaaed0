import { logFitJob, runJob } from '@kneewall/engine';
import { type LogEntry, readLog } from '@kneewall/project';
import { logPeak } from './logPeak.ts';
import { atMost, type BenchRow, multiplyAdds, perMillisecond } from './measure.ts';
import { rows, yearOfMinutes } from './yearOfMinutes.ts';

const entry: LogEntry = { clock: 'standard' };

/** Question: is a year of one-minute rows with twelve columns read and fitted in 10 s, and in 300 MB? */
export function logsBench(): BenchRow[] {
  const text = [...yearOfMinutes()].join('');
  const site = { timeZone: { value: 0, known: 'measured' } } as const;
  const given = { lines: [], density: 1 };
  const job = logFitJob({ blob: 'log', read: null, given });
  const ours = (): void => {
    const { value } = readLog(text, entry, site);
    const found = runJob(job, { blob: () => value, tell: () => {} }) as {
      readonly rows: number;
      readonly house: object;
    };
    if (found.rows !== rows || !('lossPerDegree' in found.house)) throw new Error('the log was not understood');
  };
  const tenth = (): void => multiplyAdds(1000 * perMillisecond);
  const timed = (run: () => void): number => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  ours();
  // Three in turn, the reference a tenth of its length: ten seconds fifteen times would be minutes.
  const times = [1, 2, 3].map(() => ({ ours: timed(ours), reference: 10 * timed(tenth) }));
  const middle = (of: 'ours' | 'reference'): number => times.map((t) => t[of]).sort((a, b) => a - b)[1] ?? Number.NaN;
  return [
    atMost(
      'logs: a year of minutes, 12 columns, read and fitted',
      { ours: middle('ours'), reference: middle('reference') },
      1,
      'at most the time of 7,000 million multiply-adds, about 10 s',
    ),
    logPeak(),
  ];
}
