import type { Spot } from './corners.ts';

/** What of the plan a board shows, m. */
export type Box = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** A board on the screen, px: from the plan and back. */
export type Board = {
  readonly width: number;
  readonly height: number;
  readonly perMetre: number;
  readonly put: (spot: Spot) => Spot;
  readonly lift: (place: Spot) => Spot;
};

/** m round everything drawn, so that a corner can be put beyond it. */
const margin = 1;
/** m shown across where nothing is drawn yet. */
const empty = 8;

/** The box round spots, with a margin; a plain one where there are none. */
export function boxRound(spots: readonly Spot[]): Box {
  if (spots.length === 0) return { left: -margin, right: empty, bottom: -margin, top: empty * 0.6 };
  const [xs, ys] = [spots.map((s) => s[0]), spots.map((s) => s[1])];
  return {
    left: Math.min(...xs) - margin,
    right: Math.max(...xs) + margin,
    bottom: Math.min(...ys) - margin,
    top: Math.max(...ys) + margin,
  };
}

/** The part of a box seen `times` as close round a spot. */
export function closer(box: Box, times: number, at: Spot | undefined): Box {
  if (times <= 1) return box;
  const [x, y] = at ?? [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const [w, h] = [(box.right - box.left) / times / 2, (box.top - box.bottom) / times / 2];
  return { left: x - w, right: x + w, bottom: y - h, top: y + h };
}

/** A box on a board so wide, no higher than `heightMost` px; up the plan is up the screen. */
export function boardOf(box: Box, width: number, heightMost: number): Board {
  const [across, up] = [box.right - box.left, box.top - box.bottom];
  const perMetre = Math.min(width / across, heightMost / up);
  const left = (width - across * perMetre) / 2;
  return {
    width,
    height: up * perMetre,
    perMetre,
    put: ([x, y]) => [left + (x - box.left) * perMetre, (box.top - y) * perMetre],
    lift: ([x, y]) => [box.left + (x - left) / perMetre, box.top - y / perMetre],
  };
}

/** Whole multiples of a step inside an interval. */
export const linesIn = (from: number, to: number, step: number): number[] =>
  Array.from(
    { length: Math.max(0, Math.floor(to / step) - Math.ceil(from / step) + 1) },
    (_, i) => (Math.ceil(from / step) + i) * step,
  );

/** px between two handles below which a thumb cannot tell them apart. */
const apart = 24;

/** Which of the places get a handle of their own: the chosen one, then each that is not on top of one before it. */
export function withHandle(places: readonly Spot[], chosen: number | undefined): number[] {
  const order = [...(chosen === undefined ? [] : [chosen]), ...places.keys()];
  const shown: number[] = [];
  for (const i of order) {
    const own = places[i];
    const isFree = (j: number) => {
      const other = places[j];
      return own && other && Math.hypot(own[0] - other[0], own[1] - other[1]) >= apart;
    };
    if (own && !shown.includes(i) && shown.every(isFree)) shown.push(i);
  }
  return shown.sort((a, b) => a - b);
}
