import { glassOptics, type Pane } from '../glazing/index.ts';
import type { GlassOptics } from './spec.ts';

const steps = 200;

/** A share given by angle in degrees, at equal steps of the cosine. Nothing passes at 90 degrees. */
const byCosine = (of: (degrees: number) => number): Float64Array =>
  Float64Array.from({ length: steps + 1 }, (_, k) => (k === 0 ? 0 : of((Math.acos(k / steps) * 180) / Math.PI)));

/** Mean over the half sphere of a share given by angle, weighted by the cosine: what even sky light meets. */
function overHalfSphere(of: (degrees: number) => number): number {
  let sum = 0;
  for (let k = 0; k < 90; k++) {
    const a = ((k + 0.5) * Math.PI) / 180;
    sum += of(k + 0.5) * Math.sin(2 * a) * (Math.PI / 180);
  }
  return sum;
}

/** Optics of one or two equal panes by the angle. Source: `glazing.fresnel`. */
export function opticsOfPanes(pane: Pane, panes: 1 | 2): GlassOptics {
  const at = (degrees: number) => glassOptics(pane, panes, Math.min(degrees, 89.9));
  const outer = (d: number): number => at(d).absorbed[0] ?? 0;
  const inner = (d: number): number => (panes === 2 ? (at(d).absorbed[1] ?? 0) : 0);
  const transmitted = (d: number): number => at(d).transmittance;
  return {
    transmitted: byCosine(transmitted),
    outer: byCosine(outer),
    inner: byCosine(inner),
    diffuse: {
      transmitted: overHalfSphere(transmitted),
      outer: overHalfSphere(outer),
      inner: overHalfSphere(inner),
    },
  };
}

/** The same optics with every share multiplied: coated glass that lets in less, by its label. */
export function scaledOptics(optics: GlassOptics, factor: number): GlassOptics {
  const times = (x: Float64Array) => x.map((v) => v * factor);
  const { diffuse } = optics;
  return {
    transmitted: times(optics.transmitted),
    outer: times(optics.outer),
    inner: times(optics.inner),
    diffuse: {
      transmitted: diffuse.transmitted * factor,
      outer: diffuse.outer * factor,
      inner: diffuse.inner * factor,
    },
  };
}

/**
 * Optics from a table of all the sun let in by angle (degrees, share). What the glass takes up and gives inwards is not
 * told apart in such a table: `takenUp` of it is taken as warming the inner face. Throws a RangeError for a table that
 * does not rise in angle.
 */
export function opticsOfTable(table: readonly (readonly [number, number])[], takenUp: number): GlassOptics {
  if (table.length === 0 || table.some(([d], i) => i > 0 && d <= (table[i - 1]?.[0] ?? 0)))
    throw new RangeError('angles have to rise from row to row');
  // Nothing passes along the glass.
  const last = table.at(-1)?.[0] ?? 90;
  const whole = last < 90 ? [...table, [90, 0] as const] : table;
  const at = (degrees: number): number => onTable(whole, degrees);
  return {
    transmitted: byCosine((d) => at(d) * (1 - takenUp)),
    outer: new Float64Array(steps + 1),
    inner: byCosine((d) => at(d) * takenUp),
    diffuse: {
      transmitted: overHalfSphere(at) * (1 - takenUp),
      outer: 0,
      inner: overHalfSphere(at) * takenUp,
    },
  };
}

function onTable(table: readonly (readonly [number, number])[], degrees: number): number {
  const next = table.findIndex(([d]) => d >= degrees);
  if (next < 0) return table.at(-1)?.[1] ?? 0;
  const [d1, v1] = table[next] ?? [0, 0];
  const [d0, v0] = table[next - 1] ?? [d1, v1];
  return d1 === d0 ? v1 : v0 + ((v1 - v0) * (degrees - d0)) / (d1 - d0);
}
