import type { Line } from './lines.ts';

/** A line of text where it stands, points from the left and the top. */
export type Standing = {
  readonly x: number;
  readonly y: number;
  readonly line: Line;
  /** Not to be seen: for those who search. */
  readonly white: boolean;
  /** What begins here: by which name it is found, and how it is called in the bookmarks. */
  readonly entry?: Entry | undefined;
  /** Leads to what has this name. */
  readonly to?: string;
  /** Instead of words, the number of the page on which this name stands, ending at `x`. */
  readonly pageOf?: string;
};

export type Entry = { readonly name?: string | undefined; readonly bookmark?: string | undefined };
export type Rule = {
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
  readonly width: number;
};
export type Dot = { readonly x: number; readonly y: number; readonly radius: number };

/** Something laid out that is put onto a page in one piece. */
export type Box = {
  readonly height: number;
  readonly lines: readonly Standing[];
  readonly rules: readonly Rule[];
  readonly dots: readonly Dot[];
};

/** Boxes put side by side and below each other. */
export type Open = { readonly lines: Standing[]; readonly rules: Rule[]; readonly dots: Dot[] };

export const empty = (): Open => ({ lines: [], rules: [], dots: [] });

/** Puts a box into another, so far right and down. */
export function put(into: Open, { lines, rules, dots }: Omit<Box, 'height'>, right: number, down: number): void {
  for (const l of lines) into.lines.push({ ...l, x: l.x + right, y: l.y + down });
  for (const r of rules)
    into.rules.push({ ...r, x: r.x + right, toX: r.toX + right, y: r.y + down, toY: r.toY + down });
  for (const d of dots) into.dots.push({ ...d, x: d.x + right, y: d.y + down });
}

/** Pieces below each other as one box. */
export function boxOf(pieces: readonly Piece[]): Box {
  const into: Open = empty();
  let height = 0;
  for (const piece of pieces) {
    if (piece.kind === 'box') put(into, piece.box, 0, height);
    if (piece.kind !== 'turn') height += piece.kind === 'box' ? piece.box.height : piece.height;
  }
  return { ...into, height };
}

/** What of a box that is higher than the room goes here, and the rest: no line is cut. */
export function cutBox(box: Box, room: number): [Box, Box] {
  const over = box.lines.filter(({ y, line }) => y + line.height > room);
  const top = Math.min(...box.lines.map((l) => l.y));
  // A line higher than a page goes as it is: there is no paper for it.
  const at = Math.max(Math.min(...over.map((l) => l.y), box.height), top + 1);
  const upright = (from: number, to: number) =>
    box.rules
      .filter((r) => r.toY >= from && r.y <= to)
      .map((r) => ({ ...r, y: Math.max(r.y, from), toY: Math.min(r.toY, to) }));
  const below = empty();
  const rest = {
    lines: box.lines.filter((l) => l.y >= at),
    rules: upright(at, box.height),
    dots: box.dots.filter((d) => d.y >= at),
  };
  put(below, rest, 0, -at);
  return [
    {
      height: at,
      lines: box.lines.filter((l) => l.y < at),
      rules: upright(0, at),
      dots: box.dots.filter((d) => d.y < at),
    },
    { ...below, height: box.height - at },
  ];
}

/**
 * What pages are filled with, in order. A box comes with what stands above it again where it begins a page; one that
 * `parts` goes on over the next page between its lines.
 */
export type Piece =
  | { readonly kind: 'gap'; readonly height: number }
  | { readonly kind: 'box'; readonly box: Box; readonly head?: Box | undefined; readonly parts?: boolean }
  | { readonly kind: 'turn' };
