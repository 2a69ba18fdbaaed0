/** Chances of causes after an observation: each prior chance times the chance of the observation under that cause. Source: Bayes. */
export function posterior(prior: readonly number[], likelihood: readonly number[]): readonly number[] {
  const joint = prior.map((p, i) => p * (likelihood[i] ?? 0));
  const all = joint.reduce((a, b) => a + b, 0);
  return all > 0 ? joint.map((p) => p / all) : prior;
}

/** Bits: how undecided chances that sum to 1 are. */
export const entropy = (chances: readonly number[]): number =>
  chances.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);

/** Bits that a question of yes and no is expected to settle, from the chance of yes under each cause. */
export function expectedGain(chances: readonly number[], yes: readonly number[]): number {
  const one = chances.reduce((sum, p, i) => sum + p * (yes[i] ?? 0), 0);
  const no = yes.map((y) => 1 - y);
  return entropy(chances) - one * entropy(posterior(chances, yes)) - (1 - one) * entropy(posterior(chances, no));
}
