import { type Job, type JobBlobs, piecesOf, type Rows, splitForHost } from '@kneewall/engine';
import type { FromJobs, FromPiece, ToJobs, ToPiece } from './messages.ts';

/** Workers beyond which a device gets warm without getting much quicker. */
const most = 8;

/** What a worker may borrow, handed on to those that share its job. */
export type Loan = Extract<ToJobs, { type: 'lend' }>;

/** Whether a job can be shared among workers here. Workers may not be opened from a worker in every browser. */
export const canShare = (job: Job, host: JobBlobs): boolean =>
  splitForHost(job, host) !== undefined && typeof Worker === 'function' && navigator.hardwareConcurrency > 1;

/**
 * Shares a job among the cores there are, each piece in a worker of its own that ends with the one that opened it.
 * Rejects where a worker fails.
 */
export async function onAllCores(
  job: Job,
  host: JobBlobs,
  lent: Loan,
  tell: (done: number, total: number) => void,
): Promise<unknown> {
  const split = splitForHost(job, host);
  if (!split) throw new Error('assert: only a job of pieces is shared');
  split.ready?.();
  const pieces = piecesOf(split.count, Math.min(most, navigator.hardwareConcurrency));
  const done = new Float64Array(pieces.length);
  const rows = await Promise.all(
    pieces.map((piece, w) =>
      rowsOf(lent, { type: 'piece', job, ...piece }, (n) => {
        done[w] = n;
        tell(
          done.reduce((a, b) => a + b, 0),
          split.count,
        );
      }),
    ),
  );
  return split.answers(rows.flat());
}

/** The same program opened once more, for one piece. */
function rowsOf(lent: Loan, piece: ToPiece, tell: (done: number) => void): Promise<Rows> {
  const worker = new Worker(self.location.href, { type: 'module', name: 'kneewall-piece' });
  return new Promise<Rows>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<FromPiece | FromJobs>) => {
      if (data.type !== 'piece') return;
      tell(data.done);
      if (data.rows) resolve(data.rows);
    };
    worker.onerror = () => reject(new Error('a worker failed'));
    worker.postMessage(lent);
    worker.postMessage(piece);
  }).finally(() => worker.terminate());
}

/** What a worker does with its piece. */
export function doPiece({ job, from, to }: ToPiece, host: JobBlobs, send: (message: FromPiece) => void): void {
  const rows = splitForHost(job, host)?.rows(from, to, (done) => send({ type: 'piece', done })) ?? [];
  send({ type: 'piece', done: to - from, rows });
}
