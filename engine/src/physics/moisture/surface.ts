import { magnusTemperature } from './magnus.ts';

/** Film inside where furniture and corners still the air, for mould on opaque surfaces, m²K/W. Source: `iso-13788.surface`. */
export const mouldFilm = 0.25;
/** Relative humidity at a surface from which mould grows. Source: `iso-13788.surface`. */
export const mouldHumidity = 0.8;

/** Air on both sides: °C, and the vapour pressure indoors, Pa. */
export type SurfaceAir = { readonly indoor: number; readonly outdoor: number; readonly vapour: number };

/**
 * Temperature factor of an inner surface: how far it stays on the indoor side, 0 to 1. `total` is the resistance from
 * air to air, `film` the inner part of it, m²K/W. A total of 0 gives NaN. Source: `iso-13788.surface`.
 */
export const surfaceFactor = (total: number, film: number): number => (total - film) / total;

/**
 * The coldest that a surface may be for the air at it to stay at or below a relative humidity, °C: 1 for no wet
 * surface, 0.8 against mould. `vapour` in Pa. Source: `iso-13788.surface`.
 */
export const leastTemperature = (vapour: number, humidity: number): number => magnusTemperature(vapour / humidity);

/**
 * The same as a temperature factor. Above 1 where not even a surface as warm as the room does. Undefined where indoors
 * is not the warmer side, since there no factor means anything. Source: `iso-13788.surface`.
 */
export const leastFactor = (air: SurfaceAir, humidity: number): number | undefined =>
  air.indoor > air.outdoor
    ? (leastTemperature(air.vapour, humidity) - air.outdoor) / (air.indoor - air.outdoor)
    : undefined;

/** Film at the jacket of a duct, m²K/W. Source: `air.jacket`. */
const jacketFilm = 0.1;

/** °C on the jacket of an insulated duct, taken as flat: air around and in it in °C, insulation in m²K/W. Source: `air.jacket`. */
export const jacketTemperature = (around: number, inDuct: number, insulation: number): number =>
  around - ((around - inDuct) * jacketFilm) / (insulation + jacketFilm);
