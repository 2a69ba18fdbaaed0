import type { Visit } from '../result.ts';
import type { FaultKind } from './faults.ts';
import type { Heard } from './likelihood.ts';
import type { Cause } from './table.ts';

type Weights = Partial<Readonly<Record<FaultKind, number>>>;

/** What looking at the filter does to chances: a clean one may still be too small or too dense. Invented: `commissioning.priors`. */
const byFilter: Readonly<Record<Visit['filter'], Weights>> = {
  unknown: {},
  clean: { 'dirty-filter': 0.15 },
  used: { 'dirty-filter': 1.5 },
  dirty: { 'dirty-filter': 8 },
  wet: { 'dirty-filter': 3, 'blocked-drain': 4 },
};

/** Strips that are on are in the state itself. */
const byStrips: Readonly<Record<Visit['strips'], Weights>> = {
  unknown: {},
  off: { 'strips-on': 0.03 },
  on: { 'strips-on': 0 },
};

/** How the state that was entered weighs a cause, before any number is heard. */
export function weighFor(visit: Visit, heard: readonly Heard[]): (cause: Cause) => number {
  const said = visit.taken.filter((t) => t.means === 'house').map((t) => t.baseTaken);
  const inIt = heard.some((h) => h.baseIn);
  // Known to be in it: so be it, only its size is open. Nothing of the house can be in a reading of the unit alone.
  const base = !inIt ? 0 : said.includes('no') ? 100 : 5;
  return ({ kind }) =>
    (byFilter[visit.filter][kind] ?? 1) * (byStrips[visit.strips][kind] ?? 1) * (kind === 'base-load' ? base : 1);
}
