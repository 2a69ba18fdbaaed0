/** W of direct current at full load, efficiency there, and that of the published reference machine. */
export type InverterRating = { readonly full: number; readonly nominal: number; readonly reference?: number };

/** W of alternating current from W of direct current, never above the rating. Source: `power.inverter`. */
export function inverterOut(direct: number, { full, nominal, reference = 0.9637 }: InverterRating): number {
  if (direct <= 0) return 0;
  const load = direct / full;
  const efficiency = (nominal / reference) * (-0.0162 * load - 0.0059 / load + 0.9858);
  return Math.max(0, Math.min(efficiency * direct, nominal * full));
}

/**
 * The same curve for a machine whose own idle draw is known and takes the place of the published one: W of alternating
 * current that W of direct current give, and back. Both rise and undo each other. Source: `power.inverter`.
 */
export type OwnInverter = { readonly most: number; readonly nominal: number; readonly idle: number };

const bend = 0.0162;
const straight = 0.9858;
/** Efficiency of the curve at full load, its idle draw left out. */
const whole = straight - bend;

/** W of alternating current from W of direct current that is left beside the idle draw. */
export function alternatingFrom(direct: number, own: OwnInverter): number {
  const full = own.most / own.nominal;
  const x = Math.min(Math.max(0, direct), full);
  return (own.nominal / whole) * (straight * x - (bend * x * x) / full);
}

/** W of direct current, beside the idle draw, for W of alternating current up to the most. */
export function directFor(alternating: number, own: OwnInverter): number {
  const full = own.most / own.nominal;
  const y = (Math.min(Math.max(0, alternating), own.most) * whole) / own.nominal;
  return (2 * y) / (straight + Math.sqrt(Math.max(0, straight * straight - (4 * bend * y) / full)));
}

/** Share of the full load where the second tangent touches. */
const touches = 0.5;

/**
 * The curve from above, by its tangents at no load and at half: W in at most, and the share that comes out. Two
 * tangents of a parabola meet midway. Never below the curve and at most half a per cent above it.
 */
export function tangentsOf(own: OwnInverter): { readonly width: number; readonly slope: number }[] {
  const full = own.most / own.nominal;
  const slope = (x: number): number => (own.nominal / whole) * (straight - 2 * bend * x);
  const meet = (full * touches) / 2;
  return [
    { width: meet, slope: slope(0) },
    { width: full - meet, slope: slope(touches) },
  ];
}
