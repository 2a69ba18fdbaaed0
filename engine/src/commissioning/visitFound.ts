import { nextReadings } from './causes/next.ts';
import { posteriorOf } from './causes/posterior.ts';
import type { ResponseTable } from './causes/table.ts';
import { weighFor } from './causes/weigh.ts';
import { heldAgainst } from './heldAgainst.ts';
import { bandOf } from './methods.ts';
import { powerReading } from './powerReading.ts';
import type { CommissioningResult, Visit, VisitFound } from './result.ts';
import { witnesses } from './witnesses.ts';

/** Suspects and readings that are named; all others are in one number. */
const named = 8;

/** Every visit whose responses are known with what its readings mean; the responses themselves go no farther. */
export const meaningOf = (result: CommissioningResult): CommissioningResult => ({
  ...result,
  visits: Object.fromEntries(
    Object.entries(result.visits).map(([id, { responses, ...visit }]): [string, Visit] => [
      id,
      responses ? { ...visit, found: { ok: true, value: visitFound(responses, visit) } } : visit,
    ]),
  ),
});

/** What the readings of a visit mean: verdicts, causes, what to read next. */
export function visitFound(table: ResponseTable, visit: Visit): VisitFound {
  const { readings, heard, looked } = heldAgainst(table, visit);
  const posterior = posteriorOf(table, heard, looked, weighFor(visit, heard));
  const done = new Set([
    ...visit.taken.map((t) => t.expected),
    ...(visit.filter === 'unknown' ? [] : ['look/filter']),
    ...(visit.strips === 'unknown' ? [] : ['look/strips']),
  ]);
  const suspects = posterior.suspects.slice(0, named);
  const power = powerReading(table, visit);
  return {
    expected: table.channels.map(({ id, group, subject }, i) => {
      const value = table.base[i] ?? 0;
      return { id, group, ...(subject === undefined ? {} : { subject }), value, band: bandOf(group, value) };
    }),
    readings,
    suspects,
    rest: Math.max(0, 1 - suspects.reduce((sum, s) => sum + s.chance, 0)),
    sound: posterior.suspects.find((s) => s.id === 'none')?.chance ?? 0,
    involved: posterior.involved,
    kinds: posterior.groups.length,
    next: nextReadings(table, heard, posterior, done).slice(0, named),
    lost: table.lost,
    witnesses: witnesses(table, heard),
    ...(power ? { power } : {}),
  };
}
