import { type LogFitInputs, logFitKind, makeJob, runJob } from '@kneewall/engine';
import { type LogEntry, readLog } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond } from './measure.ts';

const rows = 525_600;
const two = (n: number): string => String(n).padStart(2, '0');

/** A year of minutes with twelve columns beside the moment, made by arithmetic; invented. */
function yearOfMinutes(): string {
  const lines = [
    'time,outdoor °C,indoor °C,bedroom °C,heat W,heat pump kWh,house kWh,supply °C,return °C,flow L/s,wind m/s,sun W/m²,rh %',
  ];
  let unit = 1000;
  let house = 5000;
  for (let i = 0; i < rows; i++) {
    const day = Math.floor(i / 1440);
    const hour = (i % 1440) / 60;
    const outdoor =
      6 -
      9 * Math.cos((2 * Math.PI * day) / 365) +
      3 * Math.sin(day * 1.7) -
      3 * Math.cos((2 * Math.PI * (hour - 3)) / 24);
    const sun = Math.max(0, 500 * Math.sin(((hour - 6) * Math.PI) / 12) * (0.4 + 0.3 * Math.sin(day * 2.3)));
    const indoor = hour < 6 ? 18 + 0.1 * Math.sin(i) : 20 + 0.1 * Math.sin(i);
    const heat = Math.max(0, 150 * (indoor - outdoor) - 4 * sun - 300 + 100 * Math.sin(day * 0.9));
    unit += heat / 3 / 60_000;
    house += heat / 3 / 60_000 + 0.3 / 60;
    const month = Math.floor(day / 30.5) + 1;
    const date = `2025-${two(month)}-${two(1 + Math.floor(day - 30.5 * (month - 1)))} ${two(Math.floor(hour))}:${two(i % 60)}`;
    lines.push(
      `${date},${outdoor.toFixed(1)},${indoor.toFixed(2)},19.5,${heat.toFixed(0)},${unit.toFixed(3)},${house.toFixed(3)},35.2,20.1,250.5,${(3 + Math.sin(day)).toFixed(1)},${sun.toFixed(0)},45`,
    );
  }
  return lines.join('\n');
}

const entry: LogEntry = { clock: 'standard' };

/** Question: is a year of one-minute rows with twelve columns read and fitted in 10 s? */
export function logsBench(): BenchRow[] {
  const text = yearOfMinutes();
  const site = { timeZone: { value: 0, known: 'measured' } } as const;
  const given = { density: 1 };
  const job = makeJob(logFitKind, 2, { blob: 'log', read: null, given } satisfies LogFitInputs, 'short');
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
  ];
}
