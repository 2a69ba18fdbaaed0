import type { Plane, PlaneSun } from './planeSun.ts';
import { openViews, type Pane, sunlitShare } from './shading.ts';
import type { Window } from './spec.ts';
import type { SunSteps } from './weatherSteps.ts';

const rad = Math.PI / 180;

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
  const { optics } = window;
  const { direct, around } = pastShades(window, at, sun, plane);
  const area = window.slab.area * (window.covering ?? 1);
  const table = tableOf(optics.angles, [optics.transmitted, optics.outer, optics.inner]);
  for (let i = 0; i < n; i++) {
    const [lit, spread] = [direct[i] ?? 0, around[i] ?? 0];
    if (lit === 0 && spread === 0) continue;
    const row = Math.round((plane.cosine[i] ?? 0) * (table.rows - 1)) * 3;
    out.through[i] = area * (lit * (table.shares[row] ?? 0) + spread * optics.diffuse.transmitted);
    out.outer[i] = area * (lit * (table.shares[row + 1] ?? 0) + spread * optics.diffuse.outer);
    out.inner[i] = area * (lit * (table.shares[row + 2] ?? 0) + spread * optics.diffuse.inner);
  }
  return out;
}

/** Sun on a shaded face by step, W/m²: direct, as a mean over the face, and what comes from sky and ground. */
export function pastShades(pane: Pane, at: Plane, sun: SunSteps, plane: PlaneSun) {
  const views = openViews(pane, at.tilt);
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

/** Shares by the cosine of the angle, finely, so that the loop only looks up. */
function tableOf(angles: readonly number[], columns: readonly (readonly number[])[]) {
  const rows = 1001;
  const shares = new Float64Array(rows * columns.length);
  for (let r = 0; r < rows; r++) {
    const degrees = Math.acos(r / (rows - 1)) / rad;
    const next = Math.max(
      1,
      angles.findIndex((a) => a >= degrees),
    );
    const [d0, d1] = [angles[next - 1] ?? 0, angles[next] ?? 90];
    const share = (degrees - d0) / (d1 - d0);
    columns.forEach((c, k) => {
      shares[r * columns.length + k] = (c[next - 1] ?? 0) + ((c[next] ?? 0) - (c[next - 1] ?? 0)) * share;
    });
  }
  return { rows, shares };
}
