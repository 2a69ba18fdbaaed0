import type { Heard } from './causes/likelihood.ts';
import { lookOf } from './causes/looks.ts';
import type { Looked } from './causes/posterior.ts';
import type { ResponseTable } from './causes/table.ts';
import { contradictions } from './contradictions.ts';
import { usualMeans } from './methods.ts';
import { netPower } from './powerReading.ts';
import type { ReadingFound, Visit } from './result.ts';
import { sharesRead } from './shares.ts';
import { unitSuspect } from './unitSuspect.ts';
import { verdictOf } from './verdict.ts';
import type { Taken } from './visit.ts';

/** A split is entered as such and heard as supply air: what comes back to the unit is added. */
const splits = new Set(['equipment/split-heating', 'equipment/split-cooling']);

/** Readings against the table: verdicts, what is set aside and why, and what the causes are judged by. */
export function heldAgainst(table: ResponseTable, visit: Visit) {
  const rows = visit.taken.filter((t) => !t.expected.startsWith('look/')).map((taken) => rowOf(table, visit, taken));
  const heard = rows.flatMap((r) => (r.heard && !r.found.aside ? [{ id: r.found.id, ...r.heard }] : []));
  const against = contradictions(table, heard);
  const shares = sharesRead(table, heard);
  const looked = visit.taken.flatMap((t): Looked[] =>
    lookOf(t.expected) ? [{ id: t.expected, yes: t.value > 0 }] : [],
  );
  return {
    readings: rows.map(({ found }): ReadingFound => {
      const other = against[found.id];
      if (other !== undefined) return { ...found, aside: 'contradicts', because: other };
      const share = shares[found.id];
      return share && found.verdict?.word === 'cannot tell' ? { ...found, verdict: share, asShare: true } : found;
    }),
    heard: heard.filter((h) => against[h.id] === undefined).map(({ id: _id, ...h }): Heard => h),
    looked,
  };
}

function rowOf(table: ResponseTable, visit: Visit, taken: Taken): { found: ReadingFound; heard?: Heard } {
  const split = splits.has(taken.expected);
  const id = split ? 'commissioning/supply-air' : taken.expected;
  const channel = table.channels.findIndex((c) => c.id === id);
  const named = table.channels[channel];
  const own = { id: taken.id, expected: taken.expected, value: taken.value };
  if (!named) return { found: { ...own, net: taken.value, aside: 'unknown' } };
  const { group } = named;
  const should = table.base[channel] ?? 0;
  const net = split ? fromSplit(table, visit, taken.value) : netPower(taken, visit);
  const unit = unitSuspect(group, net, should);
  if (unit !== undefined) return { found: { ...own, group, net, should, aside: 'unit', because: unit } };
  const means = taken.means ?? usualMeans[group];
  const { repeats } = taken;
  const baseIn = means === 'house' && taken.baseTaken !== 'yes' && visit.houseBase === undefined;
  const verdict = verdictOf({ group, expected: should, value: net, means, repeats });
  // With the house's draw in it a reading of power acquits and convicts nobody.
  return {
    found: { ...own, group, net, should, ...(baseIn ? {} : { verdict }) },
    heard: { channel, value: net, means, repeats, baseIn },
  };
}

function fromSplit(table: ResponseTable, { state }: Visit, split: number): number {
  const back = table.base[table.channels.findIndex((c) => c.id === 'commissioning/unit-return')] ?? 0;
  return state.ok && state.value.mode === 'cooling' ? back - split : back + split;
}
