import { parentPort, workerData } from 'node:worker_threads';
import { type StudyInputs, studyRows } from '@kneewall/engine';

export type StudyPiece = { readonly inputs: StudyInputs; readonly from: number; readonly to: number };
export type FromStudy = { readonly done: number } | { readonly rows: readonly (readonly number[])[] };

/** Runs its piece of a study and hands the rows back. */
const { inputs, from, to } = workerData as StudyPiece;
const send = (message: FromStudy): void => parentPort?.postMessage(message);
send({ rows: studyRows(inputs, from, to, (done) => send({ done })) });
