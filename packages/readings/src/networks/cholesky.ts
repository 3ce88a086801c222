/**
 * Cholesky factor L of a symmetric positive definite matrix held row by row, written over its lower half; false where
 * the matrix is not positive definite. `size`² numbers; time grows with the third power of the size.
 */
export function factorise(matrix: Float64Array, size: number): boolean {
  for (let j = 0; j < size; j++) {
    for (let i = j; i < size; i++) {
      let sum = matrix[i * size + j] as number;
      for (let k = 0; k < j; k++) sum -= (matrix[i * size + k] as number) * (matrix[j * size + k] as number);
      if (i > j) matrix[i * size + j] = sum / (matrix[j * size + j] as number);
      else if (sum > 0) matrix[j * size + j] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Solves L·Lᵀ·x = b for a factor made by {@link factorise}; the answer is written over `b`. */
export function substitute(factor: Float64Array, size: number, b: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = b[i] as number;
    for (let k = 0; k < i; k++) sum -= (factor[i * size + k] as number) * (b[k] as number);
    b[i] = sum / (factor[i * size + i] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let k = i + 1; k < size; k++) sum -= (factor[k * size + i] as number) * (b[k] as number);
    b[i] = sum / (factor[i * size + i] as number);
  }
}
