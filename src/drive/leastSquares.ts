/** Coefficients that bring Σ (row · x − y)² to its least, by the normal equations with pivoting: enough for the handful of
 *  columns of zeros and ones that a drive has. Undefined where the columns cannot be told apart. */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): number[] | undefined {
  const count = rows[0]?.length ?? 0;
  if (count === 0 || rows.length < count) return undefined;
  const at = (row: readonly number[] | undefined, j: number) => row?.[j] ?? 0;
  const system = Array.from({ length: count }, (_, i) => [
    ...Array.from({ length: count }, (_, j) => rows.reduce((sum, row) => sum + at(row, i) * at(row, j), 0)),
    rows.reduce((sum, row, k) => sum + at(row, i) * at(y, k), 0),
  ]);
  for (let i = 0; i < count; i++) {
    let pivot = i;
    for (let k = i + 1; k < count; k++) if (Math.abs(at(system[k], i)) > Math.abs(at(system[pivot], i))) pivot = k;
    const chosen = system[pivot];
    if (chosen === undefined || Math.abs(at(chosen, i)) < 1e-9) return undefined;
    system[pivot] = system[i] ?? chosen;
    system[i] = chosen;
    for (let k = 0; k < count; k++) {
      const other = system[k];
      if (k === i || other === undefined) continue;
      const share = at(other, i) / at(chosen, i);
      system[k] = other.map((value, j) => value - share * at(chosen, j));
    }
  }
  return system.map((row, i) => at(row, count) / at(row, i));
}
