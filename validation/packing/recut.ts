import type { BarJob, BarPlan, CutSheet, SheetJob, SheetPlan } from '@kneewall/engine/physics';

const near = 1e-7;
type Part = { x: number; y: number; w: number; h: number };

const partsAfter = (
  parts: readonly Part[],
  [x1, y1]: readonly number[],
  [x2, y2]: readonly number[],
  kerf: number,
): Part[] | undefined => {
  const upright = Math.abs((x1 ?? 0) - (x2 ?? 0)) < near;
  const [at, from, to] = upright ? [x1 ?? 0, y1 ?? 0, y2 ?? 0] : [y1 ?? 0, x1 ?? 0, x2 ?? 0];
  const hit = parts.find((p) => {
    const [low, size, side, length] = upright ? [p.x, p.w, p.y, p.h] : [p.y, p.h, p.x, p.w];
    return (
      at > low - kerf - near &&
      at < low + size + near &&
      Math.abs(from - side) < near &&
      Math.abs(to - side - length) < near
    );
  });
  if (!hit) return undefined;
  const [first, second] = upright
    ? [
        { ...hit, w: at - hit.x },
        { ...hit, x: at + kerf, w: hit.x + hit.w - at - kerf },
      ]
    : [
        { ...hit, h: at - hit.y },
        { ...hit, y: at + kerf, h: hit.y + hit.h - at - kerf },
      ];
  return [...parts.filter((p) => p !== hit), first, second].filter((p) => p.w > near && p.h > near);
};

const same = (p: Part, r: { x: number; y: number; width: number; height: number }): boolean =>
  Math.abs(p.x - r.x) < near &&
  Math.abs(p.y - r.y) < near &&
  Math.abs(p.w - r.width) < near &&
  Math.abs(p.h - r.height) < near;

/** Cuts a sheet as its list says: true where every cut goes through a part, and the parts are the pieces and the rests. */
function cutsFree(sheet: CutSheet, kerf: number): boolean {
  let parts: Part[] = [{ x: 0, y: 0, w: sheet.width, h: sheet.height }];
  for (const c of sheet.cuts) {
    const next = partsAfter(parts, c.from, c.to, kerf);
    if (!next) return false;
    parts = next;
  }
  return [...sheet.placed, ...sheet.rests].every((r) => {
    const i = parts.findIndex((p) => same(p, r));
    if (i >= 0) parts.splice(i, 1);
    return i >= 0;
  });
}

const inside = (sheet: CutSheet, trim: number): boolean =>
  sheet.placed.every(
    (r) =>
      r.x >= trim - near &&
      r.y >= trim - near &&
      r.x + r.width <= sheet.width - trim + near &&
      r.y + r.height <= sheet.height - trim + near,
  );

const apart = (sheet: CutSheet, kerf: number): boolean =>
  sheet.placed.every((a, i) =>
    sheet.placed
      .slice(i + 1)
      .every(
        (b) =>
          a.x + a.width + kerf <= b.x + near ||
          b.x + b.width + kerf <= a.x + near ||
          a.y + a.height + kerf <= b.y + near ||
          b.y + b.height + kerf <= a.y + near,
      ),
  );

/** 0 where the plan can be cut and gives what was asked for; else how many of its promises are broken. */
export function sheetFaults(job: SheetJob, plan: SheetPlan): number {
  const placed = plan.sheets.flatMap((s) => s.placed);
  const given = job.pieces.map((p) => {
    const mine = placed.filter((r) => r.piece === p.id);
    const sized = mine.every((r) => {
      const [w, h] = r.turned ? [p.height, p.width] : [p.width, p.height];
      return Math.abs(r.width - w) < near && Math.abs(r.height - h) < near && (p.turns || !r.turned);
    });
    const missing = plan.leftOut.find((l) => l.piece === p.id)?.copies ?? 0;
    return sized && mine.length + missing === p.count && new Set(mine.map((r) => r.copy)).size === mine.length;
  });
  const stocked = job.stock.map((s) => plan.sheets.filter((x) => x.stock === s.id).length <= (s.count ?? Infinity));
  const sheets = plan.sheets.flatMap((s) => [inside(s, job.trim), apart(s, job.kerf), cutsFree(s, job.kerf)]);
  return [...given, ...stocked, ...sheets].filter((ok) => !ok).length;
}

/** The same for bars: pieces one after the other with the kerf between, none beyond the end. */
export function barFaults(job: BarJob, plan: BarPlan): number {
  const bars = plan.bars.map((bar) => {
    const ends = bar.pieces.map((p) => p.from + p.length);
    const follows = bar.pieces.every((p, i) =>
      i === 0 ? p.from === 0 : p.from >= (ends[i - 1] ?? 0) + job.kerf - near,
    );
    return follows && (ends.at(-1) ?? 0) <= bar.length + near;
  });
  const given = job.pieces.map((p) => {
    const mine = plan.bars.flatMap((b) => b.pieces).filter((x) => x.piece === p.id);
    const missing = plan.leftOut.find((l) => l.piece === p.id)?.copies ?? 0;
    return mine.every((x) => Math.abs(x.length - p.length) < near) && mine.length + missing === p.count;
  });
  const stocked = job.stock.map((s) => plan.bars.filter((x) => x.stock === s.id).length <= (s.count ?? Infinity));
  return [...bars, ...given, ...stocked].filter((ok) => !ok).length;
}
