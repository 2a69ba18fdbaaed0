/** Levels of the noise criterion curves by octave band, dB re 20 µPa, lowest curve first. Source: `sound.criterion`. */
export const criterionCurves: readonly (readonly [number, readonly number[]])[] = [
  [15, [47, 36, 29, 22, 17, 14, 12, 11]],
  [20, [51, 40, 33, 26, 22, 19, 17, 16]],
  [25, [54, 44, 37, 31, 27, 24, 22, 21]],
  [30, [57, 48, 41, 35, 31, 29, 28, 27]],
  [35, [60, 52, 45, 40, 36, 34, 33, 32]],
  [40, [64, 56, 50, 45, 41, 39, 38, 37]],
  [45, [67, 60, 54, 49, 46, 44, 43, 42]],
  [50, [71, 64, 58, 54, 51, 49, 48, 47]],
  [55, [74, 67, 62, 58, 56, 54, 53, 52]],
  [60, [77, 71, 67, 63, 61, 59, 58, 57]],
  [65, [80, 75, 71, 68, 66, 64, 63, 62]],
  [70, [83, 79, 75, 72, 71, 70, 69, 68]],
];

/**
 * The lowest noise criterion curve that a spectrum stays under, read between the curves: levels by octave band, dB. Below
 * NC 15 and above NC 70 the last spacing goes on, so that a louder grille always counts for more. Source: `sound.criterion`.
 */
export const noiseCriterion = (levels: readonly number[]): number =>
  levels.reduce((most, level, band) => Math.max(most, curveThrough(level, band)), Number.NEGATIVE_INFINITY);

function curveThrough(level: number, band: number): number {
  const above = criterionCurves.findIndex(([, curve]) => (curve[band] ?? 0) >= level);
  const upper = Math.max(1, above < 0 ? criterionCurves.length - 1 : above);
  const [low, high] = [criterionCurves[upper - 1], criterionCurves[upper]];
  const [from, to] = [low?.[1][band] ?? 0, high?.[1][band] ?? 1];
  return (low?.[0] ?? 0) + (((high?.[0] ?? 0) - (low?.[0] ?? 0)) * (level - from)) / (to - from);
}

/** Several sounds of known criterion heard together: their energies add. */
export const criteriaTogether = (criteria: readonly number[]): number =>
  10 * Math.log10(criteria.reduce((sum, nc) => sum + 10 ** (nc / 10), 0));
