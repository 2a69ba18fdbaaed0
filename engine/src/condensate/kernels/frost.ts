/** A full pipe in cold air; m, W/(m K), W/(m²K). */
export type ColdPipe = {
  readonly inner: number;
  readonly outer: number;
  readonly insulation: number;
  readonly film: number;
};

/** W/(m K) of pipe foam. Source: `condensate.frost`. */
const foam = 0.035;
/** Water: kg/m³, J/(kg K), and J/kg to freeze. */
const water = { density: 1000, heat: 4186, melting: 334_000 } as const;

/** K m/W from the water to the air; the pipe's wall is left out. Source: `condensate.frost`. */
export function coldResistance({ outer, insulation, film }: ColdPipe): number {
  const jacket = outer + 2 * insulation;
  return Math.log(jacket / outer) / (2 * Math.PI * foam) + 1 / (film * Math.PI * jacket);
}

/**
 * s until standing water of `from` °C reaches 0 °C in air of `air` °C, and from there until it is solid; both infinite
 * where the air does not freeze. Source: `condensate.frost`.
 */
export function timeToFreeze(
  pipe: ColdPipe,
  from: number,
  air: number,
): { readonly cold: number; readonly solid: number } {
  if (air >= 0) return { cold: Number.POSITIVE_INFINITY, solid: Number.POSITIVE_INFINITY };
  const resistance = coldResistance(pipe);
  const mass = (Math.PI / 4) * pipe.inner * pipe.inner * water.density;
  return {
    cold: resistance * mass * water.heat * Math.log((from - air) / -air),
    solid: (resistance * mass * water.melting) / -air,
  };
}

/**
 * Share of standing water that is ice after so many kelvin hours below 0 °C without a break, 0 to 1. Ice grows with kelvin
 * hours alone, however the air rises and falls; what cooling to 0 °C takes, at most a sixteenth of it all, is left out, so
 * that it leans to more ice. Source: `condensate.frost`.
 */
export function iceShare(pipe: ColdPipe, kelvinHours: number): number {
  if (!(kelvinHours > 0)) return 0;
  const mass = (Math.PI / 4) * pipe.inner * pipe.inner * water.density;
  return Math.min(1, (3600 * kelvinHours) / (coldResistance(pipe) * mass * water.melting));
}
