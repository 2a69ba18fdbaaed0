/** XᵀX row by row, and Xᵀy, of columns of equal length; where `rows` names rows, of those, as often as they are named. */
export function normalOf(
  columns: readonly ArrayLike<number>[],
  y: ArrayLike<number>,
  rows?: Int32Array,
): { normal: Float64Array; towards: Float64Array } {
  const p = columns.length;
  const n = rows ? rows.length : y.length;
  const normal = new Float64Array(p * p);
  const towards = new Float64Array(p);
  for (let i = 0; i < p; i++) {
    const a = columns[i]!;
    for (let k = 0; k < n; k++) {
      const r = rows ? rows[k]! : k;
      towards[i] = towards[i]! + a[r]! * y[r]!;
    }
    for (let j = i; j < p; j++) {
      const b = columns[j]!;
      let sum = 0;
      for (let k = 0; k < n; k++) {
        const r = rows ? rows[k]! : k;
        sum += a[r]! * b[r]!;
      }
      normal[i * p + j] = sum;
      normal[j * p + i] = sum;
    }
  }
  return { normal, towards };
}
