import type { DispatchProgramme, ProgrammeBuilder, StepRows } from './programme.ts';

/**
 * A house whose heat may be moved in time. How far its room is from a year that is already run answers to how far its
 * heat is from that year's: air at once, and one mass that fades. Linear, so that no weather appears in it.
 */
export type DispatchHouse = {
  /** K of the room for each kWh more in a step: at once, and through the mass. */
  readonly atOnce: number;
  readonly gain: number;
  /** Share of the mass's stray that is left after a step. */
  readonly left: number;
  /** By step: kWh of heat in the year that is run, and how far the room may be from it, K. */
  readonly heat: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** By step: pieces of what heat takes, rising: kWh of heat at most, kWh of alternating current for each. */
  readonly pieces: (step: number) => readonly { readonly width: number; readonly slope: number }[];
  /** Cost of a kelvin below `low` for a step. */
  readonly cold: number;
};

/** K below which no room falls and above which none climbs, however it is heated. */
const farthest = 80;

/** Adds the house's heat to a programme: its draw to what is served, its room between its bounds. */
export function addHouse(
  b: ProgrammeBuilder,
  h: DispatchHouse,
  rows: readonly StepRows[],
  at: DispatchProgramme['at'],
): void {
  const steps = rows.length;
  const reference = (t: number): number => h.heat[t] ?? 0;
  const mass = rows.map((_, t) => b.row(-h.gain * reference(t), -h.gain * reference(t)));
  const room = rows.map((_, t) => {
    const shift = h.atOnce * reference(t);
    return b.row((h.low[t] ?? 0) + shift, (h.high[t] ?? 0) + shift);
  });
  for (let t = 0; t < steps; t++) {
    const here = room[t] ?? 0;
    const pieces = h.pieces(t).filter((p) => p.width > 0);
    for (const [i, { width, slope }] of pieces.entries()) {
      const column = b.column(0, 0, width, [
        [rows[t]?.served ?? 0, -slope],
        [here, h.atOnce],
        [mass[t] ?? 0, -h.gain],
      ]);
      if (i === 0) at.heat[2 * t] = column;
      at.heat[2 * t + 1] = column + 1;
    }
    const next = mass[t + 1];
    b.column(0, -farthest, farthest, [
      [mass[t] ?? 0, 1],
      ...(next === undefined ? [] : [[next, -h.left] as const]),
      [here, 1],
    ]);
    at.cold[t] = b.column(h.cold, 0, farthest, [[here, 1]]);
  }
}
