/** Round duct with the friction of a rectangular one at equal flow, m. Source: `flow.equivalent-round` (Huebscher). */
export const equivalentRound = (a: number, b: number): number => (1.3 * (a * b) ** 0.625) / (a + b) ** 0.25;

/** Four times area over perimeter, m: goes with the true mean velocity, never with the equivalent round's. */
export const hydraulicDiameter = (a: number, b: number): number => (2 * a * b) / (a + b);
