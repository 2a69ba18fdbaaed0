import type { Recorder } from '../recorder.ts';

/** Air that mixes in an attic: m³/s from the rooms and from outdoors, and the vapour in each, Pa. */
export type AtticAir = {
  readonly up: number;
  readonly vents: number;
  readonly rooms: number;
  readonly outdoors: number;
};

/**
 * Vapour in the air of a steady attic, Pa: what leaks up from the rooms and what passes through the vents, mixed. Vapour
 * through the ceiling's own materials and what the wood takes up are left out. Without any flow not a number. Source:
 * `attic.moisture` (a balance).
 */
export function atticVapour(air: AtticAir, rec?: Recorder): number {
  const p = (air.up * air.rooms + air.vents * air.outdoors) / (air.up + air.vents);
  const inputs = { Q_up: air.up, p_in: air.rooms, Q_v: air.vents, p_out: air.outdoors };
  rec?.step('p_attic', '(Q_up * p_in + Q_v * p_out) / (Q_up + Q_v)', inputs, p, 'Pa', 'attic.moisture');
  return p;
}

/** Where a roof deck lies between the air below it and the roof's outside as sun and sky make it. */
export type DeckSides = {
  /** °C */
  readonly attic: number;
  readonly roof: number;
  /** m²K/W from the attic's air to outdoors, and the film below the deck in it. */
  readonly total: number;
  readonly film: number;
};

/** Underside of a roof deck, °C; steady. Source: `attic.moisture`. */
export function deckTemperature({ attic, roof, total, film }: DeckSides, rec?: Recorder): number {
  const t = attic - ((attic - roof) * film) / total;
  const inputs = { t_attic: attic, t_roof: roof, R_s: film, R_T: total };
  rec?.step('t_deck', 't_attic - (t_attic - t_roof) * R_s / R_T', inputs, t, '°C', 'attic.moisture');
  return t;
}
