/** Least squares of a few columns (a constant, a slope, a bend, a wave): what the straight line alone cannot show. */
export type Regression = {
  readonly coefficients: readonly number[];
  readonly residuals: Float64Array;
  /** What each row weighs in the last coefficient: Σ weight · y is it. */
  readonly weightsOfLast: Float64Array;
  /** Σ residual². */
  readonly residualSquares: number;
  readonly degreesOfFreedom: number;
  /** Standard deviation of the residuals. */
  readonly deviation: number;
  /** Variance of `weights · coefficients` for unit deviation: multiply by deviation². */
  readonly spreadOf: (weights: readonly number[]) => number;
};

/** `columns` and `y` of equal length, more rows than columns. By Gram and Schmidt, twice over, so that columns that are
 *  nearly alike lose no digits. Undefined where a column adds nothing to those before it.
 *  @throws RangeError for unequal lengths or too few rows. */
export function regress(columns: readonly ArrayLike<number>[], y: ArrayLike<number>): Regression | undefined {
  const rows = y.length;
  if (columns.some((column) => column.length !== rows)) throw new RangeError("Columns of unequal length.");
  if (rows <= columns.length) throw new RangeError(`${rows} readings cannot carry ${columns.length} coefficients.`);
  const basis: Float64Array[] = [];
  const upper: number[][] = [];
  for (const column of columns) {
    const { rest, shares } = lessBasis(column, basis);
    const length = Math.sqrt(dot(rest, rest));
    if (!(length > 1e-9 * Math.sqrt(dot(column, column)))) return undefined;
    upper.push([...shares, length]);
    basis.push(rest.map((value) => value / length));
  }
  const { rest: residuals, shares } = lessBasis(y, basis);
  const residualSquares = dot(residuals, residuals);
  const degreesOfFreedom = rows - columns.length;
  const last = upper.at(-1)?.at(-1) ?? 1;
  return {
    coefficients: solve(upper, shares),
    residuals,
    get weightsOfLast() {
      return (basis.at(-1) ?? new Float64Array(rows)).map((value) => value / last);
    },
    residualSquares,
    degreesOfFreedom,
    deviation: Math.sqrt(residualSquares / degreesOfFreedom),
    spreadOf: (weights) => {
      const z = solveTransposed(upper, weights);
      return dot(z, z);
    },
  };
}

/** What is left of a vector when its parts along the basis are taken off, and those parts. */
function lessBasis(vector: ArrayLike<number>, basis: readonly Float64Array[]) {
  const rest = Float64Array.from(vector);
  const shares = basis.map(() => 0);
  for (let pass = 0; pass < 2; pass++) {
    for (const [k, direction] of basis.entries()) {
      const share = dot(rest, direction);
      shares[k] = (shares[k] ?? 0) + share;
      for (let i = 0; i < rest.length; i++) rest[i] = (rest[i] ?? 0) - share * (direction[i] ?? 0);
    }
  }
  return { rest, shares };
}

/** `upper[k]` is column k of a triangle: its parts along the basis, its own length last. */
function solve(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = right.map(() => 0);
  for (let k = x.length - 1; k >= 0; k--) {
    let sum = right[k] ?? 0;
    for (let j = k + 1; j < x.length; j++) sum -= (upper[j]?.[k] ?? 0) * (x[j] ?? 0);
    x[k] = sum / (upper[k]?.[k] ?? 1);
  }
  return x;
}

function solveTransposed(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const z: number[] = [];
  for (const [k, column] of upper.entries()) {
    let sum = right[k] ?? 0;
    for (let j = 0; j < k; j++) sum -= (column[j] ?? 0) * (z[j] ?? 0);
    z.push(sum / (column[k] ?? 1));
  }
  return z;
}

export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
