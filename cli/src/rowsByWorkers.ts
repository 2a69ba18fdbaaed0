import { Worker } from 'node:worker_threads';
import { piecesOf, type Rows } from '@kneewall/engine';
import { Refused } from './exit.ts';
import type { FromStudy, StudyPiece } from './studyWorker.ts';

/** Splits the pieces of a job among threads; the rows come back in their order whatever the split. */
export async function rowsByWorkers(
  job: StudyPiece['job'],
  count: number,
  workers: number,
  name: string,
): Promise<Rows> {
  const done = new Float64Array(workers);
  const onTerminal = process.stderr.isTTY === true;
  const tell = (): void => {
    const all = done.reduce((a, b) => a + b, 0);
    if (onTerminal) process.stderr.write(`\r${name}: ${all} of ${count}`);
  };
  const rows = await Promise.all(
    piecesOf(count, workers).map((piece, w) =>
      rowsOf({ job, ...piece }, (n) => {
        done[w] = n;
        tell();
      }),
    ),
  );
  if (onTerminal) process.stderr.write(`\r${name}: ${count} of ${count}\n`);
  return rows.flat();
}

function rowsOf(piece: StudyPiece, tell: (done: number) => void): Promise<Rows> {
  const worker = new Worker(new URL('./studyWorker.mjs', import.meta.url), { workerData: piece });
  return new Promise((resolve, reject) => {
    worker.on('message', (message: FromStudy) => {
      if ('rows' in message) resolve(message.rows);
      else tell(message.done);
    });
    worker.on('error', reject);
    worker.on(
      'exit',
      (code) => code !== 0 && reject(new Refused('A worker stopped before it was done. Run it again.')),
    );
  });
}
