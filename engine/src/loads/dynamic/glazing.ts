import {
  type GlassOptics,
  opticsOfPanes,
  type Shade,
  scaledOptics,
  type Window,
} from '../../physics/building/index.ts';
import { commonPane } from '../../physics/glazing/index.ts';
import { glassFace, zoneFace } from './faces.ts';
import type { ShellSurface, ShellWindow } from './shell.ts';

/** Films that the U of a window counts, m²K/W. Source: `iso-6946.films`. */
const films = { inside: 0.13, outside: 0.04 };
/** A bare pane of 3 mm. */
const pane = 0.003;

const clear = { 1: opticsOfPanes(commonPane, 1), 2: opticsOfPanes(commonPane, 2) };

/** A window in its wall. An eave runs on well past the window on both sides. */
export function glazedWindow(w: ShellWindow, wall: ShellSurface): Window {
  return {
    slab: {
      id: w.id,
      area: w.width * w.height,
      // A U above what its films let through is that of the pane alone.
      layers: [{ resistance: Math.max(1 / w.u - films.inside - films.outside, pane) }],
      inside: zoneFace(wall.room, 180 - wall.tilt),
      other: glassFace(wall.tilt, wall.azimuth),
    },
    width: w.width,
    height: w.height,
    optics: opticsOf(w),
    shades: shadesOf(w),
    covering: w.covering,
  };
}

const eaveBeyond = 2;

/** The eave above, and the reveal that a window set back has round it. */
function shadesOf(w: ShellWindow): Shade[] {
  const eave: Shade[] =
    w.overhang > 0
      ? [{ kind: 'overhang', depth: w.overhang + w.recess, offset: w.gap, left: eaveBeyond, right: eaveBeyond }]
      : [];
  if (w.recess <= 0) return eave;
  const side = { kind: 'fin', depth: w.recess, offset: 0, from: 0, to: w.height } as const;
  return [
    ...eave,
    { kind: 'overhang', depth: w.recess, offset: 0, left: 0, right: 0 },
    { ...side, side: 'left' },
    { ...side, side: 'right' },
  ];
}

/** Clear glass of the same number of panes, dimmed to let in the share that the label states at right angles. */
function opticsOf(w: ShellWindow): GlassOptics {
  const optics = clear[w.panes];
  const outer = (optics.outer.at(-1) ?? 0) * w.u * films.outside;
  const inner = (optics.inner.at(-1) ?? 0) * (1 - w.u * films.inside);
  return scaledOptics(optics, w.sunShare / ((optics.transmitted.at(-1) ?? 1) + outer + inner));
}
