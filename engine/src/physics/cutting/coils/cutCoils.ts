import { cutBars } from '../bars/cutBars.ts';
import { Checking, type CutProblem } from '../problem.ts';
import { metresOf, wholeOf } from '../whole.ts';
import { fewestSplices, groupedMost } from './group.ts';

/**
 * Runs of flexible duct from coils of one length, m. `sleeve`: what a splice takes of both ends together. `rule`:
 * `fewest-splices` splices only a run that is longer than a coil; `fewest-coils` splices others too where that saves a
 * coil, and as few as will do.
 */
export type CoilJob = {
  readonly runs: readonly { readonly id: string; readonly length: number }[];
  readonly coil: number;
  readonly sleeve: number;
  readonly rule: 'fewest-splices' | 'fewest-coils';
};

export type CoilPlan = {
  /** What is cut from each coil, in order: `part` of `parts` of a run, m; and what is left of the coil. */
  readonly coils: readonly {
    readonly pieces: readonly {
      readonly run: string;
      readonly part: number;
      readonly parts: number;
      readonly length: number;
    }[];
    readonly rest: number;
  }[];
  /** Runs that are spliced, and in how many places. */
  readonly splices: readonly { readonly run: string; readonly count: number }[];
  /** No plan by the rule takes fewer coils; and of those with that many, whether none has fewer splices. */
  readonly coilsLeast: number;
  readonly proved: boolean;
  readonly problems: readonly CutProblem[];
};

type Part = { readonly run: string; readonly length: number };

function checked({ runs, coil, sleeve }: CoilJob): Checking {
  const check = new Checking();
  const sound = check.positive(['coil'], coil) && check.atLeastNought(['sleeve'], sleeve);
  if (sound && sleeve >= coil / 2) check.say('does-not-fit', ['sleeve'], sleeve, { max: coil / 2 });
  runs.forEach((r, i) => {
    if (check.positive(['runs', i, 'length'], r.length) && sound && r.length > 1000 * coil)
      check.say('too-many', ['runs', i, 'length'], r.length, { max: 1000 * coil });
  });
  check.names(
    ['runs'],
    runs.map((r) => r.id),
  );
  return check;
}

/** A run longer than a coil takes whole coils first; each splice takes its sleeve. */
function wholeCoils(runs: CoilJob['runs'], coil: number, sleeve: number) {
  const full: Part[] = [];
  const rests: Part[] = [];
  for (const r of runs) {
    let left = wholeOf(r.length);
    while (left > coil) {
      full.push({ run: r.id, length: coil });
      // The next part overlaps this one by the sleeve.
      left += sleeve - coil;
    }
    rests.push({ run: r.id, length: left });
  }
  return { full, rests };
}

/** Lays parts one after the other into coils as they come, splicing where one ends within a part. */
function laidThrough(parts: readonly Part[], coil: number, sleeve: number): Part[][] {
  const coils: Part[][] = [[]];
  let left = coil;
  for (const p of parts) {
    let length = p.length;
    while (length > left) {
      // No shorter than the sleeve: a stub that the splice would eat is left on the coil.
      if (left > sleeve) {
        coils.at(-1)?.push({ run: p.run, length: left });
        length += sleeve - left;
      }
      coils.push([]);
      left = coil;
    }
    coils.at(-1)?.push({ run: p.run, length });
    left -= length;
  }
  return coils;
}

function planOf(coils: readonly (readonly Part[])[], coil: number): Pick<CoilPlan, 'coils' | 'splices'> {
  const parts = new Map<string, number>();
  for (const p of coils.flat()) parts.set(p.run, (parts.get(p.run) ?? 0) + 1);
  const met = new Map<string, number>();
  return {
    coils: coils.map((pieces) => ({
      pieces: pieces.map(({ run, length }) => {
        const part = (met.get(run) ?? 0) + 1;
        met.set(run, part);
        return { run, part, parts: parts.get(run) ?? 1, length: metresOf(length) };
      }),
      rest: metresOf(coil - pieces.reduce((sum, p) => sum + p.length, 0)),
    })),
    splices: [...parts].flatMap(([run, n]) => (n > 1 ? [{ run, count: n - 1 }] : [])),
  };
}

/** Rests of runs shared out among coils, none of them cut in two. */
function unspliced(rests: readonly Part[], coil: number) {
  const plan = cutBars({
    pieces: rests.map((p) => ({ id: p.run, length: metresOf(p.length), count: 1 })),
    stock: [{ id: 'coil', length: metresOf(coil) }],
    kerf: 0,
    remnantLeast: 0,
  });
  const coils = plan.bars.map((b) => b.pieces.map((p) => ({ run: p.piece, length: wholeOf(p.length) })));
  return { coils, least: plan.bound, proved: plan.proved };
}

/**
 * Coils for runs of flexible duct: the fewest, then the fewest splices, by the rule that is asked for. A run longer than a
 * coil is spliced with sleeves in any case. Up to 14 runs are shared out exactly; with more, splices are the fewest found.
 * m; bad input: no coils and `problems`; never throws. Source: `cutting.cover`.
 */
export function cutCoils(job: CoilJob): CoilPlan {
  const check = checked(job);
  if (check.problems.length > 0 || job.runs.length === 0)
    return { coils: [], splices: [], coilsLeast: 0, proved: check.problems.length === 0, problems: check.problems };
  const [coil, sleeve] = [wholeOf(job.coil), wholeOf(job.sleeve)];
  const { full, rests } = wholeCoils(job.runs, coil, sleeve);
  const plain = unspliced(rests, coil);
  const ofFull = full.map((p) => [p]);
  const whole = {
    ...planOf([...ofFull, ...plain.coils], coil),
    coilsLeast: full.length + plain.least,
    proved: plain.proved,
    problems: [],
  };
  if (job.rule === 'fewest-splices') return whole;
  const grouped =
    rests.length <= groupedMost
      ? fewestSplices(
          rests.map((p) => p.length),
          coil,
          sleeve,
        )
      : undefined;
  // With many runs in a row: as many coils as the length makes, but perhaps a splice more than need be.
  const groups = grouped ?? [rests.map((_, i) => i)];
  const coils = groups.flatMap((g) =>
    laidThrough(
      g.flatMap((i) => rests[i] ?? []),
      coil,
      sleeve,
    ),
  );
  const least = Math.ceil(rests.reduce((sum, p) => sum + p.length, 0) / coil);
  if (!grouped && plain.coils.length <= coils.length)
    return { ...whole, coilsLeast: full.length + least, proved: plain.coils.length === least };
  return {
    ...planOf([...ofFull, ...coils], coil),
    coilsLeast: full.length + (grouped ? coils.length : least),
    proved: grouped !== undefined,
    problems: [],
  };
}
