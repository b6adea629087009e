/** A pivot smaller than this share of its diagonal entry counts as 0. */
const DEPENDENT = 1e-10;

/**
 * The inverse of a symmetric positive definite matrix.
 *
 * @param matrix square; only the lower triangle is read
 * @returns null when it is not positive definite, or so nearly that its inverse would mean nothing
 *
 * Source: Cholesky's factors L·Lᵀ; Commandant Benoît (1924), Bulletin géodésique 2, 67–77.
 */
export function inverseOf(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] | null {
  const lower = factor(matrix);
  if (lower === null) return null;
  const columns = matrix.map((_, at) => invertedColumn(lower, at));
  return columns.map((left) => columns.map((right) => dot(left, right, left.length)));
}

/** The lower triangle L, row by row. */
function factor(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] | null {
  const lower: number[][] = [];
  for (const [i, entries] of matrix.entries()) {
    const row: number[] = [];
    for (const [j, above] of lower.entries())
      row.push(((entries[j] as number) - dot(row, above, j)) / (above[j] as number));
    const diagonal = entries[i] as number;
    const pivot = diagonal - dot(row, row, i);
    if (!(pivot > DEPENDENT * diagonal)) return null;
    row.push(Math.sqrt(pivot));
    lower.push(row);
  }
  return lower;
}

/** Column `at` of L⁻¹; the inverse of the matrix is (L⁻¹)ᵀ·L⁻¹. */
function invertedColumn(lower: readonly (readonly number[])[], at: number): readonly number[] {
  const column: number[] = [];
  for (const [i, row] of lower.entries()) column.push(((i === at ? 1 : 0) - dot(row, column, i)) / (row[i] as number));
  return column;
}

function dot(left: readonly number[], right: readonly number[], length: number): number {
  let sum = 0;
  for (let i = 0; i < length; i += 1) sum += (left[i] as number) * (right[i] as number);
  return sum;
}
