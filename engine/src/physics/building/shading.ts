import type { Shade } from './spec.ts';

/** A window as its shades see it. */
export type Pane = { readonly width: number; readonly height: number; readonly shades: readonly Shade[] };
/** Where light comes from, in the window's own frame seen from outside: to the right, up the wall, out of it. */
export type Direction = { readonly right: number; readonly up: number; readonly out: number };

/** Level strips into which the glass is cut, for the sun and for each direction of the sky; a shadow's edge within a strip is taken at its middle. */
const fine = 24;
const coarse = 8;

/**
 * Share of the glass that light from a direction reaches past overhangs and fins, 0 to 1, by the shadow each throws
 * strip by strip; shadows that overlap count once. Light from behind the wall reaches nothing.
 */
export function sunlitShare(pane: Pane, from: Direction, strips = fine): number {
  if (from.out <= 0) return 0;
  if (pane.shades.length === 0) return 1;
  let lit = 0;
  for (let k = 0; k < strips; k++) {
    const y = ((k + 0.5) / strips) * pane.height;
    const [only] = pane.shades;
    const dark =
      only && pane.shades.length === 1
        ? shadowOn(only, pane, y, from)
        : pane.shades.flatMap((s) => shadowOn(s, pane, y, from));
    lit += pane.width - covered(dark);
  }
  return Math.max(0, lit / (strips * pane.width));
}

type Interval = readonly [number, number];

/** The stretch of a strip at height y that one shade darkens, within the glass. */
function shadowOn(s: Shade, pane: Pane, y: number, from: Direction): Interval[] {
  const found = s.kind === 'overhang' ? underOverhang(s, pane, y, from) : besideFin(s, pane, y, from);
  if (!found) return [];
  const cut: Interval = [Math.max(0, found[0]), Math.min(pane.width, found[1])];
  return cut[1] > cut[0] ? [cut] : [];
}

/** Light going back along its way meets the overhang's plane where it stands out no further than the overhang does. */
function underOverhang(
  s: Extract<Shade, { kind: 'overhang' }>,
  pane: Pane,
  y: number,
  from: Direction,
): Interval | undefined {
  const rise = pane.height + s.offset - y;
  if (from.up <= 0 || rise * from.out > s.depth * from.up) return undefined;
  const slip = (rise * from.right) / from.up;
  return [-s.left - slip, pane.width + s.right - slip];
}

function besideFin(s: Extract<Shade, { kind: 'fin' }>, pane: Pane, y: number, from: Direction): Interval | undefined {
  const towards = s.side === 'right' ? from.right : -from.right;
  if (towards <= 0) return undefined;
  // Distance from the fin at which light just passes its outer edge, and where it crosses the fin's own ends.
  const reach = (s.depth * towards) / from.out;
  const slope = from.up / towards;
  const ends = slope === 0 ? undefined : [(s.from - y) / slope, (s.to - y) / slope].sort((a, b) => a - b);
  if (!ends && (y < s.from || y > s.to)) return undefined;
  const near = Math.max(0, ends?.[0] ?? 0);
  const far = Math.min(reach, ends?.[1] ?? reach);
  if (far <= near) return undefined;
  const edge = s.side === 'right' ? pane.width + s.offset : -s.offset;
  return s.side === 'right' ? [edge - far, edge - near] : [edge + near, edge + far];
}

/** Length covered by stretches that may overlap. */
function covered(intervals: readonly Interval[]): number {
  const [only] = intervals;
  if (!only) return 0;
  if (intervals.length === 1) return only[1] - only[0];
  let end = Number.NEGATIVE_INFINITY;
  let length = 0;
  for (const [a, b] of [...intervals].sort((x, y) => x[0] - y[0])) {
    length += Math.max(0, b - Math.max(a, end));
    end = Math.max(end, b);
  }
  return length;
}

/**
 * Shares of even sky light and of light from the ground that reach the glass past its shades, 0 to 1, against what
 * would reach it without them. `tilt` of the glass in degrees. Without shades both are 1.
 */
export function openViews(pane: Pane, tilt: number): { readonly sky: number; readonly ground: number } {
  if (pane.shades.length === 0) return { sky: 1, ground: 1 };
  const sums = { sky: 0, skyLit: 0, ground: 0, groundLit: 0 };
  const [sinTilt, cosTilt] = [Math.sin((tilt * Math.PI) / 180), Math.cos((tilt * Math.PI) / 180)];
  const rings = 12;
  const sides = 36;
  for (let i = 0; i < rings; i++) {
    const away = ((i + 0.5) / rings) * (Math.PI / 2);
    const weight = Math.cos(away) * Math.sin(away);
    for (let j = 0; j < sides; j++) {
      const round = ((j + 0.5) / sides) * 2 * Math.PI;
      const from = {
        right: Math.sin(away) * Math.cos(round),
        up: Math.sin(away) * Math.sin(round),
        out: Math.cos(away),
      };
      const aloft = from.out * cosTilt + from.up * sinTilt > 0;
      const lit = weight * sunlitShare(pane, from, coarse);
      if (aloft) {
        sums.sky += weight;
        sums.skyLit += lit;
      } else {
        sums.ground += weight;
        sums.groundLit += lit;
      }
    }
  }
  return {
    sky: sums.sky > 0 ? sums.skyLit / sums.sky : 1,
    ground: sums.ground > 0 ? sums.groundLit / sums.ground : 1,
  };
}
