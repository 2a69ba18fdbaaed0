import { consequenceWords, holdPointWords, type Status } from './finding.ts';
import type { Mark } from './mark.ts';
import type { HoldPointView } from './plan.ts';

const statusOrder: readonly Status[] = ['fails', 'tight', 'unknown', 'ok'];

/** Harm first, then what fails before what is tight, unknown and fine; equal ones by how soon they matter, then by id. */
export function worstFirst(a: Mark, b: Mark): number {
  const open = (f: Mark) => (f.status === 'ok' ? 1 : 0);
  return (
    open(a) - open(b) ||
    consequenceWords.indexOf(a.consequence) - consequenceWords.indexOf(b.consequence) ||
    statusOrder.indexOf(a.status) - statusOrder.indexOf(b.status) ||
    holdPointWords.indexOf(a.holdPoint) - holdPointWords.indexOf(b.holdPoint) ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}

/** The findings gathered by the last moment at which each is cheap to act on. */
export function gatherByHoldPoint(findings: readonly Mark[]): HoldPointView[] {
  return holdPointWords.map((holdPoint) => {
    const here = findings.filter((f) => f.holdPoint === holdPoint).sort(worstFirst);
    const count = (status: Status) => here.filter((f) => f.status === status).length;
    return {
      holdPoint,
      findings: here.map((f) => f.id),
      fails: count('fails'),
      tight: count('tight'),
      unknown: count('unknown'),
      ok: count('ok'),
    };
  });
}
