import { spawnSync } from 'node:child_process';
import { closeSync, fstatSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { logFitJob, runJob } from '@kneewall/engine';
import { logTextOfBytes, readLogText } from '@kneewall/project';
import type { BenchRow } from './measure.ts';
import { yearOfMinutes } from './yearOfMinutes.ts';

export const peakFlag = '--peak-of-log';
/** MB that a whole process may take at its highest, the program and its runtime among them. */
const limit = 300;

/** A year of minutes on disk, read and fitted by a process of its own: MB at its highest. */
export function logPeak(): BenchRow {
  const folder = mkdtempSync(join(tmpdir(), 'kneewall-bench-'));
  const path = join(folder, 'year.csv');
  const file = openSync(path, 'w');
  for (const line of yearOfMinutes()) writeSync(file, line);
  closeSync(file);
  const said = spawnSync(process.execPath, [process.argv[1] ?? '', peakFlag, path], { encoding: 'utf8' });
  rmSync(folder, { recursive: true });
  const ours = Number(said.stdout);
  return {
    name: 'logs: the same from disk, memory at its highest',
    ours,
    reference: limit,
    ratio: ours / limit,
    goal: `at most ${limit} MB for the whole process`,
    holds: ours <= limit,
    unit: 'MB',
  };
}

/** What the process of its own does: the log's job, and how much memory it ever held. */
export function sayPeak(path: string): void {
  const file = openSync(path, 'r');
  const source = {
    size: fstatSync(file).size,
    bytes: (from: number, to: number) => {
      const piece = new Uint8Array(to - from);
      readSync(file, piece, 0, piece.length, from);
      return piece;
    },
  };
  const job = logFitJob({ blob: 'log', read: null, given: { lines: [], density: 1 } });
  const blob = () => {
    const log = logTextOfBytes(source, (encoding) => new TextDecoder(encoding));
    return readLogText(log, { clock: 'standard' }, { timeZone: { value: 0, known: 'measured' } }).value;
  };
  const before = process.resourceUsage().maxRSS;
  runJob(job, { blob, tell: () => {} });
  process.stderr.write(`${Math.round(before / 1024)} MB before it began\n`);
  process.stdout.write(String(process.resourceUsage().maxRSS / 1024));
}
