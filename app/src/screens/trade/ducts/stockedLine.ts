import { type DuctShape, stockedNeighbours } from '@kneewall/engine';

/** Stocked sizes from the smallest to the largest that can be stepped to, and where among them one stands. */
export type StockedLine = { readonly sizes: readonly DuctShape[]; readonly at: number };

/** More steps than any stock has. */
const most = 60;

/** All sizes that lie on the way of a section's own size, which stays in the line even where nobody stocks it. */
export function stockedLine(shape: DuctShape): StockedLine {
  const below = walk(shape, 'smaller').toReversed();
  return { sizes: [...below, shape, ...walk(shape, 'larger')], at: below.length };
}

function walk(from: DuctShape, way: 'smaller' | 'larger'): DuctShape[] {
  const passed: DuctShape[] = [];
  for (let next = stockedNeighbours(from)[way]; next && passed.length < most; next = stockedNeighbours(next)[way])
    passed.push(next);
  return passed;
}
