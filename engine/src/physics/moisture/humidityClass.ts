/**
 * Humidity classes of buildings by what goes on in them: 1 stores, 2 offices and dwellings lived in and aired as usual,
 * 3 where nobody knows, 4 kitchens and sports halls, 5 laundries and pools.
 */
export type HumidityClass = 1 | 2 | 3 | 4 | 5;

/** Upper limit of vapour pressure indoors above outdoors at 0 °C and below, Pa. Source: `iso-13788.classes` (from memory). */
const excess: Readonly<Record<HumidityClass, number>> = { 1: 270, 2: 540, 3: 810, 4: 1080, 5: 1360 };
/** Outdoors from which windows stand open and the two sides are alike, °C. */
const open = 20;

/**
 * Vapour pressure indoors above outdoors at the upper limit of a class, Pa: whole up to 0 °C outdoors, falling evenly
 * to nothing at 20 °C. NaN gives NaN. Source: `iso-13788.classes` (ISO 13788 annex A, from memory).
 */
export const vapourExcess = (humidity: HumidityClass, outdoor: number): number =>
  excess[humidity] * Math.max(0, Math.min(1, 1 - outdoor / open));
