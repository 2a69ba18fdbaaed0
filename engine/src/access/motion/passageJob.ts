import { canonicalJson } from '@kneewall/project';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { Outcome } from '../../plan/outcome.ts';
import type { AskedWay } from './asked.ts';

export const passageKind = 'access/passage';
export const passageVersion = 1;

/** Every piece at every passage, each question once. */
export type PassageInputs = { readonly ways: readonly AskedWay[] };

export const passageJob = (inputs: PassageInputs): Job => makeJob(passageKind, passageVersion, inputs, 'short');

/** A question's own name: equal pieces at equal passages have the same. */
export const askedName = (way: AskedWay): string => canonicalJson(way);

/** The questions of all ways, each once; and the place of each. */
export function eachOnce(all: readonly Outcome<AskedWay>[]): {
  readonly ways: AskedWay[];
  readonly places: Map<string, number>;
} {
  const [ways, places] = [[] as AskedWay[], new Map<string, number>()];
  for (const asked of all) {
    if (!asked.ok) continue;
    const name = askedName(asked.value);
    if (places.has(name)) continue;
    places.set(name, ways.length);
    ways.push(asked.value);
  }
  return { ways, places };
}
