/** ln of the gamma function for x above 0 (Lanczos' series, g = 7, nine terms). */
function logGamma(x: number): number {
  const c = [
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
  ];
  const z = x - 1;
  const t = z + 7.5;
  const sum = c.reduce((a, ci, i) => (i === 0 ? ci : a + ci / (z + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** The continued fraction of the incomplete beta function, by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 - ((a + b) * x) / (a + 1);
  d = 1 / (Math.abs(d) < tiny ? tiny : d);
  let h = d;
  for (let m = 1; m < 500; m++) {
    for (const n of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 + n * d;
      d = 1 / (Math.abs(d) < tiny ? tiny : d);
      c = 1 + n / c;
      if (Math.abs(c) < tiny) c = tiny;
      h *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return h;
}

/** The regularised incomplete beta function, x from 0 to 1. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(x, a, b)) / a : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Share of Student's t with so many degrees of freedom that lies beyond ±t. */
const beyond = (t: number, freedom: number): number => incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);

/**
 * The t within whose ± lies `level` (0.9, 0.95) of Student's distribution with `freedom` (1 or more) degrees of freedom.
 * NaN where there is no freedom.
 */
export function studentT(level: number, freedom: number): number {
  if (!(freedom >= 1 && level > 0 && level < 1)) return Number.NaN;
  let low = 0;
  let high = 1;
  while (beyond(high, freedom) > 1 - level) high *= 2;
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i++) {
    const middle = (low + high) / 2;
    if (beyond(middle, freedom) > 1 - level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
