/**
 * Lower triangle of a symmetric positive matrix of n rows, row by row, in place (Cholesky). False where it is not
 * positive: two of its rows are the same reading without an error of its own.
 */
export function factorise(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (matrix[i * n + k] ?? 0) * (matrix[j * n + k] ?? 0);
      if (i > j) matrix[i * n + j] = sum / (matrix[j * n + j] ?? 1);
      else if (sum <= 0) return false;
      else matrix[i * n + i] = Math.sqrt(sum);
    }
  return true;
}

/** Solves L x = b in place, `factor` as `factorise` left it. */
export function forward(factor: Float64Array, n: number, b: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (factor[i * n + k] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (factor[i * n + i] ?? 1);
  }
}

/** Solves Lᵀ x = b in place, after `forward` the whole system. */
export function backward(factor: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (factor[k * n + i] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (factor[i * n + i] ?? 1);
  }
}

/** Natural logarithm of a normal density, from its factor and the whitened difference (`forward` of reading less mean). */
export function logDensity(factor: Float64Array, n: number, whitened: Float64Array): number {
  let sum = -0.5 * n * Math.log(2 * Math.PI);
  for (let i = 0; i < n; i++) sum -= Math.log(factor[i * n + i] ?? 1) + 0.5 * (whitened[i] ?? 0) ** 2;
  return sum;
}
