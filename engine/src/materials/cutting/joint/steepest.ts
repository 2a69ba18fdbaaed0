import type { Transition } from '../../../physics/cutting/index.ts';
import { leans } from '../../../physics/cutting/transition/leans.ts';

/** Degrees that a side may lean where the duct widens along the air, and where it narrows. Source: `cutting.slopes`. */
export const slopeMost = { widening: 22.5, narrowing: 30 } as const;

type Steepest = { readonly out: number; readonly way: 'widening' | 'narrowing' };

/** The side nearest to its limit, or furthest beyond: m that it goes out or in, and which of both along the air. */
export function steepest(
  side: 'supply' | 'return',
  piece: Pick<Transition, 'start' | 'end' | 'length' | 'offset'>,
): Steepest {
  const [worst] = leans(piece)
    .map(({ outward }) => {
      const way = outward > 0 === (side === 'supply') ? ('widening' as const) : ('narrowing' as const);
      return { way, lean: Math.abs(outward) };
    })
    .sort((a, b) => b.lean / slopeMost[b.way] - a.lean / slopeMost[a.way]);
  const { way, lean } = worst ?? { way: 'widening' as const, lean: 0 };
  return { way, out: piece.length * Math.tan((lean * Math.PI) / 180) };
}
