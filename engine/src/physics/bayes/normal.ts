/** Error function to 1.2e-7: a fit of W. J. Cody's kind printed in Numerical Recipes 6.2 (from memory). */
function erfc(x: number): number {
  const z = Math.abs(x);
  const t = 1 / (1 + 0.5 * z);
  const poly =
    -z * z -
    1.26551223 +
    t *
      (1.00002368 +
        t *
          (0.37409196 +
            t *
              (0.09678418 +
                t *
                  (-0.18628806 +
                    t * (0.27886807 + t * (-1.13520398 + t * (1.48851587 + t * (-0.82215223 + t * 0.17087277))))))));
  const value = t * Math.exp(poly);
  return x >= 0 ? value : 2 - value;
}

/** Chance that a standard normal number is below `z`, to 1.2e-7. */
export const normalBelow = (z: number): number => 0.5 * erfc(-z / Math.SQRT2);
