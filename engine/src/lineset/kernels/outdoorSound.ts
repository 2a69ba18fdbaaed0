/**
 * dB at `distance` m from a source of `power` dB with so many hard planes beside it: none, the ground, a wall too, a
 * corner. Source: `lineset.sound`.
 */
export const soundAt = (power: number, distance: number, planes: 0 | 1 | 2 | 3): number =>
  power - 20 * Math.log10(distance) - 10 * Math.log10((4 * Math.PI) / 2 ** planes);

/** dB of several sources together. */
export const soundTogether = (levels: readonly number[]): number =>
  10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0));

/** m that the way over a barrier is longer than the straight one: heights and distances from the source, m. */
export function detour(source: number, top: number, at: number, ear: number, distance: number): number {
  const over = Math.hypot(at, top - source) + Math.hypot(distance - at, top - ear);
  return over - Math.hypot(distance, ear - source);
}

/** dB that a barrier takes off at `frequency` Hz for that detour, 20 at the most. Source: `lineset.barrier`. */
export const barrierTakes = (longer: number, frequency: number): number =>
  Math.min(20, 10 * Math.log10(3 + (20 * 2 * longer * frequency) / 343));

/** Hz that stands for all of a sound known by its A-weighted level alone. Source: `lineset.barrier`. */
const middleBand = 500;
const speedOfSound = 343;

/**
 * dB that one edge takes off a sound known by its A-weighted level: 10 lg (3 + 20 z K / wavelength), with K for wind that
 * bends it down over the edge; 20 at the most. `longer` m of detour, `before` and `behind` m from source and ear to the
 * edge. Ground counted with it. Source: `lineset.barrier`.
 */
export function fenceTakes(
  longer: number,
  { before, behind }: { readonly before: number; readonly behind: number },
): number {
  if (!(longer > 0)) return 0;
  const straight = before + behind - longer;
  const wind = Math.exp(-Math.sqrt((before * behind * straight) / (2 * longer)) / 2000);
  return Math.min(20, 10 * Math.log10(3 + (20 * longer * wind * middleBand) / speedOfSound));
}
