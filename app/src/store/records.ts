import { canonicalJson, hashOf } from '@kneewall/project';
import type { Act } from '../session/act.ts';

/** A project as it stands in the store: a whole text, and how many acts of the log it already holds. */
export type Base = { readonly id: string; readonly text: string; readonly acts: number; readonly sum: string };

/** One act as it stands in the log, with its checksum. */
export type LogRecord = Act & { readonly project: string; readonly sum: string };

/** What the list of projects on this device shows, without opening any. */
export type Listed = { readonly id: string; readonly name: string; readonly changed: number };

/** Everything one act puts into the store, in one transaction. */
export type Entry = { readonly record: LogRecord; readonly listed: Listed; readonly base?: Base };

export type StoredProject = { readonly base: Base; readonly records: readonly LogRecord[] };

export const baseOf = (id: string, text: string, acts: number): Base => ({
  id,
  text,
  acts,
  sum: hashOf(`${acts}\n${text}`),
});
export const baseHolds = (base: Base): boolean => hashOf(`${base.acts}\n${base.text}`) === base.sum;

const textOf = (project: string, { number, kind, edits }: Act): string =>
  canonicalJson({ project, number, kind, edits });

export const recordOf = (project: string, act: Act): LogRecord => ({
  ...act,
  project,
  sum: hashOf(textOf(project, act)),
});
export const recordHolds = (record: LogRecord): boolean => hashOf(textOf(record.project, record)) === record.sum;
