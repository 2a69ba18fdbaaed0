/**
 * One bin of a season. Temperatures °C, everything else W while the bin lasts; `weight` is hours, or the share of a
 * season's hours. `running` is the share of time the compressor runs, `factor` what stopping and starting leaves of its
 * efficiency.
 */
export type SeasonRow = {
  readonly outdoor: number;
  readonly weight: number;
  readonly load: number;
  /** By the compressor. */
  readonly delivered: number;
  /** The most the compressor can give. */
  readonly capacity: number;
  readonly running: number;
  readonly factor: number;
  /** Into the compressor and its fans. */
  readonly input: number;
  /** Resistance heat for what is left of the load. */
  readonly backup: number;
};

/** A season summed: W times weight, and what comes out for each unit put in. */
export type Season = {
  readonly rows: readonly SeasonRow[];
  readonly heat: number;
  readonly input: number;
  readonly backup: number;
  readonly ratio: number;
};

const total = (rows: readonly SeasonRow[], of: (r: SeasonRow) => number): number =>
  rows.reduce((a, r) => a + r.weight * of(r), 0);

/** A heating season: the whole load counts, backup is paid for. No load at all gives a ratio of 0. */
export function heatingSeason(rows: readonly SeasonRow[]): Season {
  const [heat, input, backup] = [total(rows, (r) => r.load), total(rows, (r) => r.input), total(rows, (r) => r.backup)];
  const paid = input + backup;
  return { rows, heat, input, backup, ratio: paid > 0 ? heat / paid : 0 };
}

/** A cooling season: what is not delivered is not counted. */
export function coolingSeason(rows: readonly SeasonRow[]): Season {
  const [heat, input] = [total(rows, (r) => r.delivered), total(rows, (r) => r.input)];
  return { rows, heat, input, backup: 0, ratio: input > 0 ? heat / input : 0 };
}

/** What stopping and starting leaves of the efficiency: 1 while it runs on, `1 - cyclic` at no load. */
export const partLoadFactor = (cyclic: number, running: number): number => 1 - cyclic * (1 - running);
