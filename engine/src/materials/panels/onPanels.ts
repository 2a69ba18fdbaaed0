import { type FlatPiece, packSheets } from '../../physics/cutting/index.ts';
import type { PanelPiece } from '../../plan/lines.ts';
import { handId } from '../cutting/atHand.ts';
import { asLaid, type Merged } from '../list/merged.ts';
import type { Own } from '../result.ts';
import type { PanelPlan } from './result.ts';
import { panelSheet } from './sheet.ts';

/** m by which two panels differ and are still one thickness; m of what is left that is worth keeping. Common practice, no source. */
const [sameThickness, keepLeast] = [0.002, 0.3];
/** Boxes joined and nodes: the list is made anew at every change, and a few pieces are settled in far fewer. */
const effort = { joins: 200_000, nodes: 100 };

/** Lines of the list whose pieces are cut from panels, on the fewest sheets; those of which a piece goes on no sheet stay an area. */
export function onPanels(
  lines: readonly Merged[],
  own: Own,
): { readonly lines: readonly Merged[]; readonly panels: readonly PanelPlan[] } {
  const made = lines.map((line) => {
    const panels = line.panels && planOf(line, line.panels, own);
    const good = panels && panels.plan.problems.length === 0 && panels.plan.leftOut.length === 0;
    if (!good) return { line, panels: [] };
    const laid = { piece: panelSheet.width * panelSheet.length, count: panels.plan.cost };
    return { line: asLaid(line, laid), panels: [panels] };
  });
  return { lines: made.map((m) => m.line), panels: made.flatMap((m) => m.panels) };
}

function planOf({ id, what }: Merged, { thickness, pieces }: NonNullable<Merged['panels']>, own: Own): PanelPlan {
  const each = pieces.flatMap((p, i) =>
    Array.from({ length: p.count }, (_, n) => ({ ...p, id: p.count > 1 ? `${i} ${n + 1}` : `${i}` })),
  );
  const hand = own.panels.filter((h) => h.thickness === undefined || Math.abs(h.thickness - thickness) < sameThickness);
  const plan = packSheets({
    pieces: each.map((p) => ({ id: p.id, width: p.length, height: p.width, count: 1, turns: true })),
    stock: [
      { id: 'panel', width: panelSheet.length, height: panelSheet.width, cost: 1 },
      ...hand.map((h) => ({ id: handId(h.id), width: h.length, height: h.width, count: h.count, cost: 0 })),
    ],
    kerf: own.saw,
    trim: 0,
    remnantLeast: keepLeast,
    effort,
  });
  return {
    id,
    of: 'panel',
    thickness,
    pieces: each.map((p) => ({ ...flat(p.id, p), for: p.id })),
    plan,
    names: Object.fromEntries([
      ...each.map((p) => [p.id, p.name]),
      ...hand.map((h) => [handId(h.id), h.name]),
      ['what', what],
    ]),
  };
}

/** A plain rectangle: nothing to fold and no holes. */
const flat = (id: string, { length, width }: PanelPiece): FlatPiece => ({
  id,
  outline: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  size: { width: length, height: width },
  lines: [],
  holes: [],
  panels: [],
  measures: [],
});
