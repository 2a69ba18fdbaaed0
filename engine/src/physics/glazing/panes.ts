/** A pane of clear glass: refractive index, extinction per mm, thickness mm. */
export type Pane = { readonly index: number; readonly extinction: number; readonly thickness: number };

export type Optics = { readonly transmittance: number; readonly reflectance: number; readonly absorptance: number };

/** Reflectance of one surface for both polarisations at an angle of incidence (degrees). Source: `glazing.fresnel`. */
export function surfaceReflectance(index: number, degrees: number): readonly [number, number] {
  if (degrees < 1e-6) {
    const normal = ((index - 1) / (index + 1)) ** 2;
    return [normal, normal];
  }
  const a = (Math.min(degrees, 89.9999) * Math.PI) / 180;
  const b = Math.asin(Math.sin(a) / index);
  return [(Math.sin(b - a) / Math.sin(b + a)) ** 2, (Math.tan(b - a) / Math.tan(b + a)) ** 2];
}

/** Optics of one pane for one polarisation, all bounces counted. */
function paneOptics(pane: Pane, degrees: number, polarisation: 0 | 1): Optics {
  const rho = surfaceReflectance(pane.index, degrees)[polarisation];
  const inside = Math.asin(Math.sin((degrees * Math.PI) / 180) / pane.index);
  const tau = Math.exp((-pane.extinction * pane.thickness) / Math.cos(inside));
  const transmittance = ((1 - rho) ** 2 * tau) / (1 - (rho * tau) ** 2);
  const reflectance = rho + rho * transmittance * tau;
  return { transmittance, reflectance, absorptance: 1 - transmittance - reflectance };
}

/**
 * Transmittance, reflectance and absorptance of each pane (outside first) of one or two equal panes. The two
 * polarisations go through both panes apart and are averaged at the end. Source: `glazing.fresnel`.
 */
export function glassOptics(
  pane: Pane,
  panes: 1 | 2,
  degrees: number,
): { transmittance: number; reflectance: number; absorbed: readonly number[] } {
  const both = ([0, 1] as const).map((p) => {
    const one = paneOptics(pane, degrees, p);
    return panes === 1 ? { t: one.transmittance, r: one.reflectance, a: [one.absorptance] } : twoPanes(one);
  });
  const mean = (f: (x: (typeof both)[number]) => number) => both.reduce((s, x) => s + f(x) / 2, 0);
  return {
    transmittance: mean((x) => x.t),
    reflectance: mean((x) => x.r),
    absorbed: Array.from({ length: panes }, (_, i) => mean((x) => x.a[i] ?? 0)),
  };
}

function twoPanes(p: Optics): { t: number; r: number; a: number[] } {
  const between = 1 - p.reflectance ** 2;
  return {
    t: p.transmittance ** 2 / between,
    r: p.reflectance + (p.transmittance ** 2 * p.reflectance) / between,
    a: [p.absorptance * (1 + (p.transmittance * p.reflectance) / between), (p.absorptance * p.transmittance) / between],
  };
}

/** Share of the sun at the angle that a window lets in, against normal incidence. Clear glass of common thickness. */
export function angleModifier(panes: 1 | 2, degrees: number): number {
  const normal = glassOptics(commonPane, panes, 0);
  const slanted = glassOptics(commonPane, panes, Math.min(degrees, 89.9));
  return degrees >= 90 ? 0 : slanted.transmittance / normal.transmittance;
}

/** The glass of the standard envelope tests. */
export const commonPane: Pane = { index: 1.526, extinction: 0.0196, thickness: 3.175 };
