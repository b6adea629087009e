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

/** A column as Excel hands it over. */
type Column = readonly (readonly (number | string)[])[];

/** The least a tally must do: one addition for each pick, under its plant. */
export function sumsByKey(keys: Column, amounts: Column): ReadonlyMap<unknown, number> {
  const sums = new Map<unknown, number>();
  for (let at = 0; at < keys.length; at += 1) {
    const key = keys[at]?.[0];
    sums.set(key, (sums.get(key) ?? 0) + Number(amounts[at]?.[0]));
  }
  return sums;
}

/** The least a look at each cell must do: read it as a number, whatever it is. */
export function parsed(cells: Column): number {
  let numbers = 0;
  for (const row of cells) for (const cell of row) numbers += Number.isNaN(Number.parseFloat(String(cell))) ? 0 : 1;
  return numbers;
}
