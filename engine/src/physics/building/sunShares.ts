import type { Slab, Window } from './spec.ts';

/** Share of light that floors, walls and ceilings take up when it first falls on them. Source: `loads.inside-sun` (common practice). */
const takenUp = 0.6;
/** Share that goes out again where it falls on glass. */
const outAgain = 0.8;

/**
 * Who takes up the sun let into each zone: the floor what falls on it first, the rest all faces by their area, glass
 * letting some out again. Slabs come back with their shares; those of one zone sum to less than one by what is lost.
 */
export function withSunShares(slabs: readonly Slab[], windows: readonly Window[]): Slab[] {
  const zones = new Set(windows.map((w) => w.slab.inside.zone));
  const sums = new Map([...zones].map((z) => [z, sumsOf(z, slabs, windows)]));
  const shareOf = (zone: string, area: number, floor: boolean): number => {
    const sum = sums.get(zone);
    if (!sum) return 0;
    const first = sum.floor > 0 && floor ? (takenUp * area) / sum.floor : 0;
    const left = sum.floor > 0 ? 1 - takenUp : 1;
    return first + (left * takenUp * area) / sum.all;
  };
  return slabs.map((s) => ({
    ...s,
    sunShare: shareOf(s.inside.zone, s.area, s.inside.looks === 1),
    ...(s.other.side === 'zone' ? { sunShareOther: shareOf(s.other.zone, s.area, s.other.looks === 1) } : {}),
  }));
}

function sumsOf(zone: string, slabs: readonly Slab[], windows: readonly Window[]): { floor: number; all: number } {
  let floor = 0;
  let all = 0;
  for (const s of slabs) {
    for (const face of [s.inside, s.other]) {
      if (face.side !== 'zone' || face.zone !== zone) continue;
      all += takenUp * s.area;
      if (face.looks === 1) floor += s.area;
    }
  }
  for (const w of windows) if (w.slab.inside.zone === zone) all += outAgain * w.slab.area;
  return { floor, all };
}
