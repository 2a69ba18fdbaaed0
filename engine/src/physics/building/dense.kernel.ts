/** Splits a dense matrix into triangles in place, without pivoting: for matrices that their diagonal dominates. */
export function factor(m: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const pivot = 1 / m[k * n + k]!;
    m[k * n + k] = pivot;
    for (let i = k + 1; i < n; i++) {
      const row = i * n;
      const share = m[row + k]! * pivot;
      if (share === 0) continue;
      m[row + k] = share;
      for (let j = k + 1; j < n; j++) m[row + j] = m[row + j]! - share * m[k * n + j]!;
    }
  }
}

/** Solves with the triangles; the solution replaces `x[at]` to `x[at + n - 1]`. */
export function solveFactored(m: Float64Array, n: number, x: Float64Array, at: number): void {
  for (let i = 1; i < n; i++) {
    let sum = x[at + i]!;
    for (let j = 0; j < i; j++) sum -= m[i * n + j]! * x[at + j]!;
    x[at + i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[at + i]!;
    for (let j = i + 1; j < n; j++) sum -= m[i * n + j]! * x[at + j]!;
    x[at + i] = sum * m[i * n + i]!;
  }
}
