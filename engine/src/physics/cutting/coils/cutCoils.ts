import { cutBars } from '../bars/cutBars.ts';
import { metresOf, wholeOf } from '../whole.ts';
import { type CoilJob, type CoilPlan, checkedCoils } from './coilJob.ts';
import { fewestSplices, groupedMost } from './group.ts';
import { type Coil, laidThrough, type Part, toldCoils } from './layCoils.ts';

type Whole = { readonly coil: number; readonly sleeve: number; readonly splicesMost: number };
type AtHand = NonNullable<CoilJob['atHand']>;

/** Runs longer than a coil that a length at hand holds in one: each from the shortest that does, the longest run first. */
function wholeFromHand(runs: CoilJob['runs'], atHand: AtHand, coil: number) {
  const left = atHand.map((h) => ({ ...h }));
  const uncut: Coil[] = [];
  for (const r of [...runs].sort((a, b) => b.length - a.length)) {
    const length = wholeOf(r.length);
    if (length <= coil) break;
    const [own] = left
      .filter((h) => h.count > 0 && wholeOf(h.length) >= length)
      .sort((a, b) => a.length - b.length || (a.id < b.id ? -1 : 1));
    if (!own) continue;
    own.count--;
    uncut.push({ from: own.id, length: wholeOf(own.length), parts: [{ run: r.id, length }] });
  }
  const done = new Set(uncut.flatMap((c) => c.parts.map((p) => p.run)));
  return { uncut, runs: runs.filter((r) => !done.has(r.id)), atHand: left.filter((h) => h.count > 0) };
}

/** A run longer than a coil takes whole coils first; each splice takes its sleeve. `most`: its rest may not be spliced again. */
function partsOf(runs: CoilJob['runs'], { coil, sleeve, splicesMost }: Whole) {
  return runs.map((r) => {
    let [left, full] = [wholeOf(r.length), 0];
    while (left > coil) {
      full++;
      // The next part overlaps this one by the sleeve.
      left += sleeve - coil;
    }
    return { run: r.id, full, rest: { run: r.id, length: left }, most: full >= splicesMost };
  });
}

/** Parts shared out among lengths at hand, which cost nothing, and coils, none of them cut in two. */
function unspliced(parts: readonly Part[], atHand: AtHand, coil: number) {
  const stock = atHand.map((h) => ({ ...h, cost: 0 }));
  const plan = cutBars({
    pieces: parts.map((p, i) => ({ id: `${i}`, length: metresOf(p.length), count: 1 })),
    // A name that no person gives.
    stock: [{ id: '\n', length: metresOf(coil), cost: 1 }, ...stock],
    kerf: 0,
    remnantLeast: 0,
  });
  const coils = plan.bars.map((b): Coil => {
    const own = b.pieces.flatMap((p) => parts[Number(p.piece)] ?? []);
    return { ...(b.stock === '\n' ? {} : { from: b.stock }), length: wholeOf(b.length), parts: own };
  });
  return { coils, least: plan.bound, proved: plan.proved };
}

/** Runs laid through one coil after the other, spliced where one ends: the fewest splices up to 14 runs, else in a row. */
function spliced(rests: readonly Part[], { coil, sleeve }: Whole): { readonly coils: Coil[]; readonly exact: boolean } {
  const exact = rests.length <= groupedMost;
  const lengths = rests.map((p) => p.length);
  // With many runs in a row: as many coils as the length makes, but perhaps a splice more than need be.
  const groups = exact ? fewestSplices(lengths, coil, sleeve) : [rests.map((_, i) => i)];
  const rows = groups.flatMap((g) =>
    laidThrough(
      g.flatMap((i) => rests[i] ?? []),
      coil,
      sleeve,
    ),
  );
  return { coils: rows.map((parts) => ({ length: coil, parts })), exact };
}

const bought = (coils: readonly Coil[]): number => coils.filter((c) => c.from === undefined).length;

/**
 * Coils for runs of flexible duct: the fewest bought, then the fewest splices, by the rule that is asked for. What is at hand
 * is laid out first, and a run longer than a coil is spliced with sleeves unless a length at hand holds it. Up to 14 runs
 * are shared out exactly; with more, with lengths at hand or with runs that may not be spliced again, `coilsLeast` states
 * the gap. m; bad input: no coils and `problems`; never throws. Sources: `cutting.cover`, `cutting.splices`.
 */
export function cutCoils(job: CoilJob): CoilPlan {
  const problems = checkedCoils(job);
  if (problems.length > 0 || job.runs.length === 0) {
    const nothing = { coils: [], bought: 0, splices: [], tooMany: [], coilsLeast: 0 };
    return { ...nothing, proved: problems.length === 0, problems };
  }
  const size = {
    coil: wholeOf(job.coil),
    sleeve: wholeOf(job.sleeve),
    splicesMost: job.splicesMost ?? Number.POSITIVE_INFINITY,
  };
  const { coil, splicesMost } = size;
  const first = wholeFromHand(job.runs, job.atHand ?? [], coil);
  const split = partsOf(first.runs, size);
  const fulls = split.flatMap(({ run, full }) => Array.from({ length: full }, (): Part => ({ run, length: coil })));
  const plain = unspliced([...fulls, ...split.map((s) => s.rest)], first.atHand, coil);
  // Which run a long length at hand went to was not searched: only what lengths add up to is then sure.
  const held = (job.atHand ?? []).reduce((sum, h) => sum + h.count * wholeOf(h.length), 0);
  const all = job.runs.reduce((sum, r) => sum + wholeOf(r.length), 0);
  const surely = Math.max(0, Math.ceil((all - held) / coil - 1e-9));
  const least = first.uncut.length > 0 ? surely : plain.least;
  const whole: CoilPlan = {
    ...toldCoils([...first.uncut, ...plain.coils], splicesMost),
    coilsLeast: least,
    proved: first.uncut.length > 0 ? bought(plain.coils) === least : plain.proved,
    problems: [],
  };
  if (job.rule === 'fewest-splices') return whole;
  const fromHand = plain.coils.filter((c) => c.from !== undefined);
  const taken = new Set(fromHand.flatMap((c) => c.parts));
  const open = split.filter((s) => !taken.has(s.rest));
  const through = spliced(
    open.filter((s) => !s.most).map((s) => s.rest),
    size,
  );
  const fixed = unspliced(
    [...fulls, ...open.filter((s) => s.most).map((s) => s.rest)].filter((p) => !taken.has(p)),
    [],
    coil,
  );
  const coils = [...first.uncut, ...fromHand, ...fixed.coils, ...through.coils.filter((c) => c.parts.length > 0)];
  const exact = through.exact && held === 0 && !open.some((s) => s.most && s.rest.length > 0);
  if (!exact && whole.bought <= bought(coils)) return { ...whole, coilsLeast: surely, proved: whole.bought === surely };
  const coilsLeast = exact ? bought(coils) : surely;
  return { ...toldCoils(coils, splicesMost), coilsLeast, proved: bought(coils) === coilsLeast, problems: [] };
}
