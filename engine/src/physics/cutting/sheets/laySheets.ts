import type { Pattern } from '../cover/pattern.ts';
import { wholeOf } from '../whole.ts';
import type { WholeSheets } from './checkSheets.ts';
import { type Box, joined } from './fronts.ts';
import { layBox, pruned } from './layout.ts';
import type { CutSheet, SheetJob, SheetPlan } from './sheetJob.ts';
import type { SheetOracle } from './sheetOracle.ts';

const setOf = ({ counts }: Pattern): number[] => [...counts].flatMap((n, i) => Array.from({ length: n }, () => i));

/** The box in nanometres, whatever unit it was searched in. */
const scaled = (b: Box, unit: number): Box => ({
  ...b,
  w: b.w * unit,
  h: b.h * unit,
  first: b.first && scaled(b.first, unit),
  second: b.second && scaled(b.second, unit),
});

/** The chosen sheets with their pieces, cuts and rests; a piece that two patterns would give is cut once. */
export function laySheets(
  job: SheetJob,
  sorts: WholeSheets,
  chosen: readonly Pattern[],
  oracle: SheetOracle,
): Pick<SheetPlan, 'sheets' | 'leftOut'> {
  const wanted = [...sorts.demand];
  const next = sorts.demand.map(() => 0);
  const copies = new Map<string, number>();
  const join = (a: Box, b: Box, beside: boolean) => joined(a, b, beside, sorts.kerf);
  let remnants = 0;
  const sheets = chosen.flatMap((p): CutSheet[] => {
    const stock = job.stock[p.kind];
    const full = oracle.boxOn(p.kind, setOf(p));
    const box = full && pruned(full, wanted, join);
    if (!stock || !box) return [];
    const sheet = { w: wholeOf(stock.width), h: wholeOf(stock.height) };
    const laid = layBox(scaled(box, sorts.unit), sheet, wholeOf(job.trim), wholeOf(job.kerf));
    const placed = laid.placed.map(({ sort, turned, ...rect }) => {
      const own = sorts.ids[sort]?.[next[sort] ?? 0];
      next[sort] = (next[sort] ?? 0) + 1;
      const piece = own?.id ?? '';
      const copy = (copies.get(piece) ?? 0) + 1;
      copies.set(piece, copy);
      return { ...rect, piece, copy, turned: turned !== (own?.turned ?? false) };
    });
    const area = placed.reduce((sum, r) => sum + r.width * r.height, 0);
    const rests = laid.rests.map((r) => {
      const keep = Math.min(r.width, r.height) >= job.remnantLeast;
      return keep ? { ...r, remnant: `${stock.id} rest ${++remnants}` } : r;
    });
    const { width, height } = stock;
    return [{ stock: stock.id, width, height, placed, cuts: laid.cuts, rests, used: area / (width * height) }];
  });
  return { sheets, leftOut: missing(sorts, next) };
}

function missing(sorts: WholeSheets, cut: readonly number[]): SheetPlan['leftOut'] {
  const copies = new Map<string, number>();
  sorts.ids.forEach((ids, i) => {
    for (const { id } of ids.slice(cut[i] ?? 0)) copies.set(id, (copies.get(id) ?? 0) + 1);
  });
  return [...copies].map(([piece, n]) => ({ piece, copies: n }));
}
