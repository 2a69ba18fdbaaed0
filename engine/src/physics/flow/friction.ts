import type { Recorder } from '../recorder.ts';

/** Below it the flow is laminar, above `turbulent` it is taken as fully turbulent; between, f follows a straight line
 * in Re so that pressure rises steadily with flow. Source: `flow.transition` (our choice; the true flow wavers there). */
const laminar = 2300;
const turbulent = 4000;

/**
 * Darcy friction factor by Colebrook-White. Re and relative roughness without unit. Newton on 1/√f from an explicit
 * start, three steps, then within 1e-13 for 2300 < Re < 1e12. Re 0 gives Infinity. Source: `flow.colebrook`.
 */
export function frictionFactor(reynolds: number, roughness: number): number {
  if (reynolds <= laminar) return 64 / reynolds;
  if (reynolds >= turbulent) return colebrook(reynolds, roughness);
  const share = (reynolds - laminar) / (turbulent - laminar);
  return (1 - share) * (64 / laminar) + share * colebrook(turbulent, roughness);
}

/**
 * d ln f / d ln Re at a friction factor already known: -1 in laminar flow, towards 0 in rough turbulent flow. From
 * Colebrook's own equation, so that Newton on flows has exact slopes.
 */
export function frictionGrowth(f: number, reynolds: number, roughness: number): number {
  if (reynolds <= laminar) return -1;
  if (reynolds < turbulent)
    return ((colebrook(turbulent, roughness) - 64 / laminar) * reynolds) / ((turbulent - laminar) * f);
  const x = 1 / Math.sqrt(f);
  const inner = roughness / 3.7 + (2.51 * x) / reynolds;
  const b = (2 * 2.51) / (reynolds * inner * Math.LN10);
  return (-2 * b) / (1 + b);
}

function colebrook(reynolds: number, roughness: number): number {
  const a = roughness / 3.7;
  const b = 2.51 / reynolds;
  // x = 1/√f solves x + 2 log10(a + b x) = 0; Haaland's form starts within 2 %.
  let x = -1.8 * Math.log10(a ** 1.11 + 6.9 / reynolds);
  for (let i = 0; i < 3; i++) {
    const inner = a + b * x;
    const miss = x + 2 * Math.log10(inner);
    x -= miss / (1 + (2 * b) / (inner * Math.LN10));
  }
  return 1 / (x * x);
}

/** A straight run: m, mm are all m. */
export type Straight = {
  readonly length: number;
  readonly diameter: number;
  readonly roughness: number;
  readonly area: number;
};
/** kg/m³ and Pa s. */
export type Air = { readonly density: number; readonly viscosity: number };

/** Pressure lost along a straight run, Pa, at a flow in m³/s (positive). `factor` multiplies for slack flexible duct. */
export function straightDrop(run: Straight, flow: number, air: Air, factor = 1, rec?: Recorder): number {
  if (flow <= 0) return 0;
  const v = flow / run.area;
  const re = (air.density * v * run.diameter) / air.viscosity;
  const f = frictionFactor(re, run.roughness / run.diameter);
  const drop = (factor * f * run.length * air.density * v * v) / (2 * run.diameter);
  rec?.step('v', 'Q / A', { Q: flow, A: run.area }, v, 'm/s', 'flow.darcy');
  rec?.step(
    'Re',
    'rho * v * D / mu',
    { rho: air.density, v, D: run.diameter, mu: air.viscosity },
    re,
    '',
    'flow.darcy',
  );
  rec?.step(
    'f',
    'solved',
    {
      Re: re,
      roughness: run.roughness / run.diameter,
      residual: colebrookResidual(f, re, run.roughness / run.diameter),
    },
    f,
    '',
    'flow.colebrook',
  );
  rec?.step(
    'dp',
    'k * f * L * rho * v * v / (2 * D)',
    { k: factor, f, L: run.length, rho: air.density, v, D: run.diameter },
    drop,
    'Pa',
    'flow.darcy',
  );
  return drop;
}

/** How far a factor misses Colebrook's equation; zero within rounding where the flow is turbulent. */
export const colebrookResidual = (f: number, reynolds: number, roughness: number): number =>
  reynolds < turbulent ? 0 : 1 / Math.sqrt(f) + 2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * Math.sqrt(f)));
