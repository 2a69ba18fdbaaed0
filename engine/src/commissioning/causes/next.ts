import { entropy, expectedGain } from '../../physics/bayes/index.ts';
import { methods, usualMeans } from '../methods.ts';
import { densities, type Heard } from './likelihood.ts';
import { chanceOfYes, type Look, looks } from './looks.ts';
import type { Posterior } from './posterior.ts';
import type { ResponseTable } from './table.ts';

/** A reading or a look that was not taken, and bits that it is expected to settle. */
export type NextReading = {
  readonly id: string;
  readonly gain: number;
  readonly minutes: number;
  /** Times it is to be read. */
  readonly times: number;
};

/** Shares of all chances below which a severity is not followed up. */
const kept = 2e-3;
/** Points of a reading's range. */
const gridPoints = 81;

/**
 * What to read next: expected information for a minute of work, most first. `skip` are channels and looks that are
 * done, or cannot be done.
 */
export function nextReadings(
  table: ResponseTable,
  heard: readonly Heard[],
  found: Posterior,
  skip: ReadonlySet<string>,
): readonly NextReading[] {
  const numbers = table.channels.flatMap(({ id, group }, channel): NextReading[] => {
    if (skip.has(id)) return [];
    const means = usualMeans[group];
    const times = methods[means].improvised ? 3 : 1;
    const row: Heard = { channel, value: 0, means, repeats: times, baseIn: false };
    return [{ id, gain: gainOf(table, [...heard, row], found), minutes: methods[means].minutes * times, times }];
  });
  return [...numbers, ...lookGains(table, found, skip)].sort((a, b) => b.gain / b.minutes - a.gain / a.minutes);
}

function gainOf(table: ResponseTable, rows: readonly Heard[], { suspects, weighed }: Posterior): number {
  const density = densities(table, rows);
  const top = weighed.filter((w) => w.chance > kept);
  const all = top.reduce((sum, w) => sum + w.chance, 0);
  const curves = top.map((w) => ({ ...density.last(w.point), suspect: w.suspect, chance: w.chance / all }));
  if (curves.length < 2) return 0;
  const low = Math.min(...curves.map((c) => c.mean - 4 * c.sd));
  const high = Math.max(...curves.map((c) => c.mean + 4 * c.sd));
  const width = (high - low) / (gridPoints - 1);
  const sums = new Float64Array(suspects.length);
  const used = [...new Set(curves.map((c) => c.suspect))];
  // Each curve's own sum over the grid makes up for its width beside the step: a sharp one loses nothing.
  const shares = curves.map((c) => {
    const on = Array.from({ length: gridPoints }, (_, g) =>
      Math.exp(-0.5 * ((low + g * width - c.mean) / Math.max(c.sd, width)) ** 2),
    );
    const total = on.reduce((a, b) => a + b, 0);
    return on.map((x) => (c.chance * x) / total);
  });
  let after = 0;
  for (let g = 0; g < gridPoints; g++) {
    for (const i of used) sums[i] = 0;
    curves.forEach((c, i) => {
      sums[c.suspect] = (sums[c.suspect] ?? 0) + (shares[i]?.[g] ?? 0);
    });
    const here = used.map((i) => sums[i] ?? 0);
    const seen = here.reduce((a, b) => a + b, 0);
    if (seen > 0) after += seen * entropy(here.map((x) => x / seen));
  }
  const before = new Float64Array(suspects.length);
  for (const c of curves) before[c.suspect] = (before[c.suspect] ?? 0) + c.chance;
  return Math.max(0, entropy([...before]) - after);
}

/** Where a look can be taken: the runs, or the rooms, of the causes it is for. */
const placesOf = (look: Look, { causes }: ResponseTable): readonly string[] => [
  ...new Set(causes.flatMap((c) => (look.yes[c.kind] === undefined ? [] : (c.subject ?? [])))),
];

function lookGains(table: ResponseTable, { suspects }: Posterior, skip: ReadonlySet<string>): NextReading[] {
  const byId = new Map(table.causes.map((c) => [c.id, c]));
  const chances = suspects.map((s) => s.chance);
  return looks.flatMap((look) =>
    (look.ofRuns ? placesOf(look, table) : [undefined]).flatMap((subject): NextReading[] => {
      const id = `look/${look.id}${subject === undefined ? '' : `:${subject}`}`;
      if (skip.has(id)) return [];
      const yes = suspects.map(({ causes }) =>
        causes.reduce((most, c) => {
          const cause = byId.get(c);
          return cause ? Math.max(most, chanceOfYes(look, subject, cause)) : most;
        }, 0),
      );
      return [{ id, gain: expectedGain(chances, yes), minutes: look.minutes, times: 1 }];
    }),
  );
}
