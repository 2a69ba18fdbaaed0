import { dewPointMagnus, saturationMagnus } from './magnus.ts';

/** °C and share of saturation indoors, °C outdoors. */
export type SurfaceAir = { readonly inside: number; readonly humidity: number; readonly outside: number };

/** Temperature factor of an inside surface: 0 where it is as cold as outdoors, 1 as warm as the room. m²K/W. */
export const temperatureFactor = (u: number, insideFilm: number): number => 1 - u * insideFilm;

export const surfaceTemperature = (factor: number, { inside, outside }: SurfaceAir): number =>
  outside + factor * (inside - outside);

/**
 * The least factor at which the air at the surface stays at or below a share of saturation: 1 for no wet surface, 0.8 for
 * no mould. Not finite where it is as warm outdoors as indoors. Source: `iso-13788.surface`.
 */
export function leastFactor(air: SurfaceAir, most: number): number {
  const vapour = air.humidity * saturationMagnus(air.inside);
  return (dewPointMagnus(vapour / most) - air.outside) / (air.inside - air.outside);
}

/** m²K/W of the air at a jacket. */
const jacketFilm = 0.1;

/** °C on the jacket of an insulated duct, taken as flat: air around and in it in °C, insulation in m²K/W. Source: `air.jacket`. */
export const jacketTemperature = (around: number, inDuct: number, resistance: number): number =>
  around - ((around - inDuct) * jacketFilm) / (resistance + jacketFilm);
