import { rad } from '../exact.ts';
import type { Plane, PlaneSun } from './planeSun.ts';
import { openViews, type Pane, sunlitShare } from './shading.ts';
import type { Window } from './spec.ts';
import type { SunSteps } from './weatherSteps.ts';

/** Sun at a window by step, W: let through, and taken up by the outer and the inner face of the glass. */
export type WindowSun = {
  readonly through: Float32Array;
  readonly outer: Float32Array;
  readonly inner: Float32Array;
};

/** Tilt and azimuth in degrees are those of the wall. Shades cut direct light by its shadow, sky and ground light by what they hide. */
export function windowSun(window: Window, at: Plane, sun: SunSteps, plane: PlaneSun): WindowSun {
  const n = sun.up.length;
  const made = (): Float32Array => new Float32Array(n);
  const out = { through: made(), outer: made(), inner: made() };
  const { transmitted, outer, inner, diffuse } = window.optics;
  const { direct, around } = pastShades(window, at, sun, plane);
  const area = window.slab.area * (window.covering ?? 1);
  const last = transmitted.length - 1;
  for (let i = 0; i < n; i++) {
    const [lit, spread] = [direct[i] ?? 0, around[i] ?? 0];
    if (lit === 0 && spread === 0) continue;
    const place = Math.min(plane.cosine[i] ?? 0, 1) * last;
    const row = Math.min(Math.floor(place), last - 1);
    const share = (x: Float64Array): number => {
      const before = x[row] ?? 0;
      return before + ((x[row + 1] ?? 0) - before) * (place - row);
    };
    out.through[i] = area * (lit * share(transmitted) + spread * diffuse.transmitted);
    out.outer[i] = area * (lit * share(outer) + spread * diffuse.outer);
    out.inner[i] = area * (lit * share(inner) + spread * diffuse.inner);
  }
  return out;
}

/** Sun on a shaded face by step, W/m²: direct, as a mean over the face, and what comes from sky and ground. */
export function pastShades(pane: Pane, at: Plane, sun: SunSteps, plane: PlaneSun) {
  // In the dark nobody asks what is hidden.
  const views = sun.level.some((x) => x > 0) ? openViews(pane, at.tilt) : { sky: 1, ground: 1 };
  const frame = frameOf(at.tilt, at.azimuth);
  return {
    direct: plane.direct.map((light, i) =>
      light > 0 ? light * sunlitShare(pane, directionOf(sun, i, frame, plane.cosine[i] ?? 0)) : 0,
    ),
    around: plane.sky.map((sky, i) => sky * views.sky + (plane.ground[i] ?? 0) * views.ground),
  };
}

type Frame = {
  readonly right: readonly [number, number];
  readonly up: readonly [number, number, number];
};

/** To the right along the wall, seen from outside, and up it; east, north and up. */
function frameOf(tilt: number, azimuth: number): Frame {
  const [s, c] = [Math.sin(azimuth * rad), Math.cos(azimuth * rad)];
  return {
    right: [-c, s],
    up: [-Math.cos(tilt * rad) * s, -Math.cos(tilt * rad) * c, Math.sin(tilt * rad)],
  };
}

function directionOf(sun: SunSteps, i: number, frame: Frame, out: number) {
  const [east, north, up] = [sun.east[i] ?? 0, sun.north[i] ?? 0, sun.up[i] ?? 0];
  return {
    right: east * frame.right[0] + north * frame.right[1],
    up: east * frame.up[0] + north * frame.up[1] + up * frame.up[2],
    out,
  };
}
