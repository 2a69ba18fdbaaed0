import type { DuctFact, Spot } from './ductFacts.ts';

/** Between levels and between rows of the schematic, and from the air handler's middle to where its ducts begin. */
const level = 3;
const row = 1.6;
const handlerHalf = 0.6;

/**
 * Ways for a tree that nobody has drawn: supply runs to the right, return to the left, each end on a row of its own,
 * each section level with the middle of what it feeds. A section that leads back to itself is left out.
 */
export function schematicWays(ducts: readonly DuctFact[]): Map<string, readonly Spot[]> {
  const ways = new Map<string, readonly Spot[]>();
  for (const side of ['supply', 'return'] as const) {
    const mine = ducts.filter((x) => x.side === side);
    const heights = rowsOf(mine);
    const middle = (Math.min(...heights.values(), 0) + Math.max(...heights.values(), 0)) / 2;
    const place = (from: string | undefined, x: number, y: number): void => {
      for (const duct of mine.filter((d) => d.from === from)) {
        const at = (heights.get(duct.id) ?? 0) - middle;
        const end = x + level;
        const mirrored = (across: number): number => (side === 'supply' ? across : -across);
        ways.set(duct.id, [
          [mirrored(x), y],
          [mirrored(x), at],
          [mirrored(end), at],
        ]);
        place(duct.id, end, at);
      }
    };
    place(undefined, handlerHalf, 0);
  }
  return ways;
}

/** The height of every section that hangs on the air handler: ends one below the other, the others in their middle. */
function rowsOf(ducts: readonly DuctFact[]): Map<string, number> {
  const heights = new Map<string, number>();
  let next = 0;
  const visit = (duct: DuctFact): number => {
    const below = ducts.filter((d) => d.from === duct.id).map(visit);
    const height = below.length === 0 ? next : (Math.min(...below) + Math.max(...below)) / 2;
    if (below.length === 0) next -= row;
    heights.set(duct.id, height);
    return height;
  };
  for (const duct of ducts.filter((d) => d.from === undefined)) visit(duct);
  return heights;
}
