/**
 * Loss coefficients on the velocity pressure of the duct named in the section's fitting. Round numbers: the true
 * loss of a site-made fitting scatters by far more than the second figure.
 * Source: `flow.fittings` (published duct-design tables, from memory; collars and boots are common practice).
 */
export const lossCoefficients = {
  'elbow-round': 0.22,
  'elbow-round-tight': 0.71,
  'elbow-rectangular': 1.2,
  'elbow-rectangular-vaned': 0.13,
  'bend-flexible': 0.3,
  collar: 0.55,
  'collar-rounded': 0.2,
  'tee-branch': 1.36,
  'tee-straight': 0.1,
  reducer: 0.05,
  damper: 0.2,
  'boot-elbow': 1.0,
  'boot-straight': 0.35,
  entry: 0.5,
} as const satisfies Readonly<Record<string, number>>;

export type FittingKind = keyof typeof lossCoefficients;

/** Round elbow of 90° by centreline radius over diameter, between the table's points. */
export function roundElbow(ratio: number): number {
  const table: readonly (readonly [number, number])[] = [
    [0.5, 0.71],
    [0.75, 0.33],
    [1, 0.22],
    [1.5, 0.15],
    [2, 0.13],
    [2.5, 0.12],
  ];
  const [first, last] = [table[0] ?? [0, 0], table.at(-1) ?? [0, 0]];
  if (ratio <= first[0]) return first[1];
  for (let i = 1; i < table.length; i++) {
    const [x0, c0] = table[i - 1] ?? first;
    const [x1, c1] = table[i] ?? last;
    if (ratio <= x1) return c0 + ((c1 - c0) * (ratio - x0)) / (x1 - x0);
  }
  return last[1];
}

/** Abrupt widening, on the smaller duct's velocity pressure; exact (Borda-Carnot). */
export const abruptWidening = (areaRatio: number): number => (1 - areaRatio) ** 2;
