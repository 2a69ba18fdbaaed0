import { parentPort, workerData } from 'node:worker_threads';
import type { Job, Rows } from '@kneewall/engine';
import { splitOf } from '@kneewall/engine';

export type StudyPiece = { readonly job: Pick<Job, 'kind' | 'inputs'>; readonly from: number; readonly to: number };
export type FromStudy = { readonly done: number } | { readonly rows: Rows };

/** Runs its piece of a study and hands the rows back. */
const { job, from, to } = workerData as StudyPiece;
const send = (message: FromStudy): void => parentPort?.postMessage(message);
send({ rows: splitOf(job)?.rows(from, to, (done) => send({ done })) ?? [] });
