/** A column whose part independent of the earlier ones is shorter than this share of it is dependent: R's lm() rule. */
const DEPENDENT = 1e-7;

/** What is left of a design and a response once the design is triangular. */
export interface Triangular {
  /** Indices of the independent columns, in their order. */
  readonly kept: readonly number[];
  /** For the ith kept column its first i + 1 entries. */
  readonly triangle: readonly (readonly number[])[];
  /** The response in the same rotated frame: first the kept columns' share, then what no column explains. */
  readonly rotated: Float64Array;
}

/**
 * Turns the columns, one by one, into an upper triangle by Householder reflections. The arrays given are used up.
 *
 * @param columns equally long
 * @param response as long as the columns
 *
 * Source: A. S. Householder (1958), Journal of the ACM 5, 339–342.
 */
export function reflect(columns: readonly Float64Array[], response: Float64Array): Triangular {
  const kept: number[] = [];
  const triangle: number[][] = [];
  for (const [index, column] of columns.entries()) {
    const at = kept.length;
    const length = lengthFrom(column, at);
    // reflections keep lengths, so the column is still as long as it was given
    if (at >= column.length || length <= DEPENDENT * lengthFrom(column, 0)) continue;

    const head = column[at] as number;
    const diagonal = head > 0 ? -length : length;
    const mirror = column.slice(at);
    mirror[0] = head - diagonal;
    for (const later of [...columns.slice(index + 1), response]) mirrorFrom(later, at, mirror);
    kept.push(index);
    triangle.push([...column.subarray(0, at), diagonal]);
  }
  return { kept, triangle, rotated: response };
}

function lengthFrom(column: Float64Array, at: number): number {
  let squares = 0;
  for (const value of column.subarray(at)) squares += value * value;
  return Math.sqrt(squares);
}

/** Reflects the part of a vector from a place on at the plane perpendicular to the mirror. */
function mirrorFrom(vector: Float64Array, at: number, mirror: Float64Array): void {
  let product = 0;
  let square = 0;
  for (let i = 0; i < mirror.length; i += 1) {
    const m = mirror[i] as number;
    product += m * (vector[at + i] as number);
    square += m * m;
  }
  const times = (2 * product) / square;
  for (let i = 0; i < mirror.length; i += 1)
    vector[at + i] = (vector[at + i] as number) - times * (mirror[i] as number);
}
