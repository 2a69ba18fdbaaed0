import type { Recorder } from '../recorder.ts';

/** Conductances of a steady attic to rooms, through the roof, and of the air passing through; W/K. */
export type AtticConductances = { readonly ceiling: number; readonly roof: number; readonly vents: number };

/** Temperatures on the three sides, °C: rooms, the roof's outside as sun and sky make it, outdoor air; W put in by ducts. */
export type AtticSurroundings = {
  readonly rooms: number;
  readonly roof: number;
  readonly air: number;
  readonly ducts: number;
};

/** Air temperature of a steady attic, °C. Source: `attic.steady` (a heat balance). */
export function steadyAttic(g: AtticConductances, at: AtticSurroundings, rec?: Recorder): number {
  const t = (g.ceiling * at.rooms + g.roof * at.roof + g.vents * at.air + at.ducts) / (g.ceiling + g.roof + g.vents);
  rec?.step(
    't_attic',
    '(G_c * t_rooms + G_r * t_roof + G_v * t_out + Q_ducts) / (G_c + G_r + G_v)',
    { G_c: g.ceiling, t_rooms: at.rooms, G_r: g.roof, t_roof: at.roof, G_v: g.vents, t_out: at.air, Q_ducts: at.ducts },
    t,
    '°C',
    'attic.steady',
  );
  return t;
}

/** What the sun adds to the outdoor air as a roof or wall feels it, less what the sky takes; K. Source: `sol-air`. */
export const solAirRise = (absorptance: number, irradiance: number, film: number, skyLoss: number): number =>
  (absorptance * irradiance) / film - skyLoss;

/** Flow through two equal openings in series by stack, m³/s. Area of each m², height m, K warmer inside, °C outdoors. Cd 0.6. */
export const stackVentFlow = (area: number, height: number, difference: number, outdoor: number): number =>
  ((0.6 * area) / Math.SQRT2) * Math.sqrt((2 * 9.80665 * height * difference) / (outdoor + difference + 273.15));

/** The same by wind, with the difference of pressure coefficients between the two. */
export const windVentFlow = (area: number, wind: number, coefficientDifference: number): number =>
  ((0.6 * area) / Math.SQRT2) * wind * Math.sqrt(coefficientDifference);
