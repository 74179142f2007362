/** Weighted least squares by columns made orthogonal: small helpers of the bend fit. All columns have one length. */

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** Takes from `column`, in place, what lies along each column of an orthonormal basis. */
export function removeBasis(column: Float64Array, basis: readonly Float64Array[]): void {
  for (const q of basis) {
    const along = dot(q, column);
    for (let i = 0; i < column.length; i++) column[i] = (column[i] as number) - along * (q[i] as number);
  }
}

/** `column` after removeBasis, in place, and that scaled to length 1; undefined when the basis already holds it. */
export function unitBeside(column: Float64Array, basis: readonly Float64Array[]): Float64Array | undefined {
  const before = Math.sqrt(dot(column, column));
  removeBasis(column, basis);
  const size = Math.sqrt(dot(column, column));
  if (!(size > 1e-9 * before && size > 0)) return undefined;
  const unit = new Float64Array(column.length);
  for (let i = 0; i < column.length; i++) unit[i] = (column[i] as number) / size;
  return unit;
}

/** Coefficients of y on the terms with weights, by elimination with pivots; 0 for a term the others already hold. */
export function coefficients(terms: readonly Float64Array[], y: Float64Array, weight: Float64Array): number[] {
  const size = terms.length;
  const weighted = new Float64Array(y.length);
  const rows = terms.map((term) => {
    for (let i = 0; i < weighted.length; i++) weighted[i] = (term[i] as number) * (weight[i] as number);
    return [...terms.map((other) => dot(weighted, other)), dot(weighted, y)];
  });
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) if (cell(rows, i, k) > cell(rows, pivot, k)) pivot = i;
    const top = rows[pivot] as number[];
    rows[pivot] = rows[k] as number[];
    rows[k] = top;
    if (cell(rows, k, k) < 1e-14) continue;
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const row = rows[i] as number[];
      const factor = (row[k] as number) / (top[k] as number);
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - factor * (top[j] as number);
    }
  }
  return rows.map((row, k) => (Math.abs(row[k] as number) < 1e-14 ? 0 : (row[size] as number) / (row[k] as number)));
}
const cell = (rows: readonly number[][], i: number, k: number): number => Math.abs(rows[i]?.[k] ?? 0);
