import type { Spot } from './ductFacts.ts';

/** A box on the sheet, in its unit, y downward. */
export type Rect = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Something that wants a label: shorter texts are tried where longer ones would cover something. */
export type Wanted = {
  readonly id: string;
  /** Lines of each text, the fullest first. */
  readonly texts: readonly (readonly string[])[];
  /** Spots the label may stand beside, the best first, and how far from each its edge stays. */
  readonly anchors: readonly { readonly at: Spot; readonly clear: number }[];
};

export type Label = { readonly id: string; readonly lines: readonly string[]; readonly box: Rect };

type Room = { readonly taken: readonly Rect[]; readonly within: Rect; readonly size: number };

/** Height of a line over the size of its letters, and the mean width of a letter over that size. */
export const lineHeight = 1.18;
const letterWidth = 0.58;

/** Around a spot: above, below, right, left, then the corners. */
const directions: readonly Spot[] = [
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];

/**
 * Places labels one after the other where they cover neither each other nor what is drawn; the fullest text that
 * fits, and the shortest one in the least bad place where none does. Sizes in the sheet's unit. Deterministic.
 */
export function placeLabels(wanted: readonly Wanted[], { taken, within, size }: Room): Label[] {
  const placed: Label[] = [];
  for (const want of wanted) {
    const blocked = [...taken, ...placed.map((l) => l.box)];
    let best: { label: Label; cost: number } | undefined;
    for (const lines of want.texts) {
      best = bestPlace(want, lines, blocked, within, size);
      if (best?.cost === 0) break;
    }
    if (best) placed.push(best.label);
  }
  return placed;
}

function bestPlace(want: Wanted, lines: readonly string[], blocked: readonly Rect[], within: Rect, size: number) {
  const width = textWidth(lines, size);
  const height = lines.length * size * lineHeight;
  let best: { label: Label; cost: number } | undefined;
  for (const { at, clear } of want.anchors)
    for (const [dx, dy] of directions) {
      const middle: Spot = [at[0] + dx * (clear + width / 2), at[1] + dy * (clear + height / 2)];
      const box = { x: middle[0] - width / 2, y: middle[1] - height / 2, width, height };
      const cost = blocked.reduce((sum, r) => sum + overlap(box, r), 0) + 20 * (width * height - overlap(box, within));
      const rounded = Math.round(cost * 1e6) / 1e6;
      if (best === undefined || rounded < best.cost) best = { label: { id: want.id, lines, box }, cost: rounded };
      if (rounded === 0) return best;
    }
  return best;
}

/** Width of the longest line, from the mean width of letters. */
export const textWidth = (lines: readonly string[], size: number): number =>
  Math.max(...lines.map((l) => l.length), 1) * size * letterWidth;

const overlap = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y));
