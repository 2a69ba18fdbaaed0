import type { Board } from './board.ts';

/** A stretch of a box's walls, m from their start: `lap` of board beyond it goes into the next. */
export type Section = { readonly from: number; readonly to: number; readonly lap: number };

/**
 * Sections from boards `most` m long. All but the last lose a board's thickness to the joint, where half a board goes
 * over half a board: 46 to 47 in are left of 48. Equal lengths, so that no stub is left over.
 */
export function sectionsOf(length: number, most: number, board: Board): Section[] {
  if (length <= most + 1e-9) return [{ from: 0, to: length, lap: 0 }];
  const effective = most - board.thickness;
  const n = Math.ceil((length - 1e-9) / effective);
  return Array.from({ length: n }, (_, i) => ({
    from: (i * length) / n,
    to: ((i + 1) * length) / n,
    lap: i < n - 1 ? board.thickness : 0,
  }));
}

/** A cap plugs into its end by half a board: the walls reach that far beyond the air inside. */
export const plugDepth = (board: Board): number => board.thickness / 2;
