/** A room as sound meets it: floor m², height m, mean share of sound that its surfaces take up. */
export type SoundRoom = { readonly floor: number; readonly height: number; readonly absorption: number };

/**
 * Level at a distance (m) from a source in a wall or ceiling, less the source's power level, dB: 10 log(Q/(4 π r²) + 4/R),
 * Q 2, R = S ᾱ/(1 - ᾱ), the room taken as square. Absorption between 0 and 1, neither of them. Source: `sound.room`.
 */
export function roomEffect({ floor, height, absorption }: SoundRoom, distance: number): number {
  const surface = 2 * floor + 4 * Math.sqrt(floor) * height;
  const constant = (surface * absorption) / (1 - absorption);
  return 10 * Math.log10(2 / (4 * Math.PI * distance ** 2) + 4 / constant);
}

/** What makers' sheets take off for a room, dB. Source: `sound.sheet`. */
export const sheetRoomEffect = -10;
