import { checkProject, type Problem, type Project } from '@kneewall/project';
import type { Act } from '../session/act.ts';
import { appliedAll } from '../session/changes.ts';
import { baseHolds, type Entry, recordHolds, type StoredProject } from './records.ts';

export type Restored =
  | { readonly ok: true; readonly project: Project; readonly acts: readonly Act[]; readonly damagedAt?: number }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The project a store holds: its base with the acts after it done again, each checked against its checksum and the
 * schema. What cannot be trusted is left out from there on, and `damagedAt` says so.
 */
export function restore(stored: StoredProject): Restored {
  const parsed = baseHolds(stored.base) ? parse(stored.base.text) : undefined;
  const opened = checkProject(parsed);
  if (!opened.ok) return { ok: false, problems: opened.problems };
  let project = opened.project;
  const acts: Act[] = [];
  for (const record of stored.records) {
    const expected = (acts.at(-1)?.number ?? 0) + 1;
    if (record.number !== expected || !recordHolds(record)) return { ok: true, project, acts, damagedAt: expected };
    if (record.number > stored.base.acts) {
      const { value, problems } = appliedAll(project, record.edits);
      if (problems.length > 0) return { ok: true, project, acts, damagedAt: expected };
      project = value;
    }
    acts.push({ number: record.number, kind: record.kind, edits: record.edits });
  }
  return { ok: true, project, acts, ...(acts.length < stored.base.acts ? { damagedAt: acts.length + 1 } : {}) };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What is stored of a project together with what of it still waits to be: opening it again must not lose that. */
export function withWaiting(
  stored: StoredProject | undefined,
  waiting: readonly Entry[],
  id: string,
): StoredProject | undefined {
  const own = waiting.filter((e) => e.record.project === id);
  const base = stored?.base ?? own.find((e) => e.base)?.base;
  if (!base) return undefined;
  const kept = stored?.records ?? [];
  const last = kept.at(-1)?.number ?? 0;
  return { base, records: [...kept, ...own.map((e) => e.record).filter((r) => r.number > last)] };
}
