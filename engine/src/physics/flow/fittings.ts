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
