import { factorise, substitute } from "../../networks/cholesky.ts";

/** A symmetric positive definite matrix made ready for solving. */
export interface Factored {
  readonly size: number;
  readonly factor: Float64Array;
  /** Natural logarithm of the determinant. */
  readonly logDeterminant: number;
}

/** Undefined where the matrix is not positive definite, as numbers too far apart in size can make it. */
export function factored(matrix: Float64Array, size: number): Factored | undefined {
  const factor = matrix.slice();
  if (!factorise(factor, size)) return undefined;
  let logDeterminant = 0;
  for (let i = 0; i < size; i++) logDeterminant += 2 * Math.log(factor[i * size + i] as number);
  return Number.isFinite(logDeterminant) ? { size, factor, logDeterminant } : undefined;
}

/** The matrix's inverse times a vector. */
export function solved({ factor, size }: Factored, vector: Float64Array): Float64Array {
  const answer = vector.slice();
  substitute(factor, size, answer);
  return answer;
}

/** Solves L·x = b for the factor L of a matrix; the answer is written over `b`. Its square is b's squared distance. */
export function whitened({ factor, size }: Factored, b: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = b[i] as number;
    for (let k = 0; k < i; k++) sum -= (factor[i * size + k] as number) * (b[k] as number);
    b[i] = sum / (factor[i * size + i] as number);
  }
}

export function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** Logarithm of the normal density of a deviation from the mean. */
export function logDensity(covariance: Factored, deviation: Float64Array): number {
  const distance = inner(deviation, solved(covariance, deviation));
  return -0.5 * (distance + covariance.logDeterminant + covariance.size * Math.log(2 * Math.PI));
}

/** Adds the outer product of a vector to a matrix of the vector's size, times `weight`. */
export function addOuter(matrix: Float64Array, vector: Float64Array, weight = 1): void {
  const size = vector.length;
  for (let i = 0; i < size; i++) {
    const a = (vector[i] as number) * weight;
    if (a === 0) continue;
    for (let j = 0; j < size; j++) matrix[i * size + j] = (matrix[i * size + j] as number) + a * (vector[j] as number);
  }
}

/** What one coordinate of a normal vector is expected to be, and its deviation, given all the others. */
export function givenOthers(covariance: Factored, deviation: Float64Array, at: number): readonly [number, number] {
  const unit = new Float64Array(covariance.size);
  unit[at] = 1;
  const column = solved(covariance, unit);
  const precision = column[at] as number;
  return [(deviation[at] as number) - inner(column, deviation) / precision, Math.sqrt(1 / precision)];
}

/** log Σ exp, without overflow. */
export function logSum(logs: readonly number[]): number {
  const top = Math.max(...logs);
  if (!Number.isFinite(top)) return top;
  let sum = 0;
  for (const one of logs) sum += Math.exp(one - top);
  return top + Math.log(sum);
}
