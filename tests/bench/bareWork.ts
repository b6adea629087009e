/** The least a machine must do for an average and a spread: two passes over a range as Excel hands it over. */
export function twoPassSum(range: readonly (readonly (number | string)[])[]): number {
  let sum = 0;
  for (const row of range) sum += row[0] as number;
  const mean = sum / range.length;
  let squares = 0;
  for (const row of range) squares += ((row[0] as number) - mean) ** 2;
  return squares;
}

/** A loop of that many additions. */
export function additions(count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += i;
  return sum;
}
