import type { Plan } from "../../src/methods/power";

/** A row of numbers of tests/reference/power.json; the columns are those of the R function that made it. */
export function numbers(row: readonly (number | null)[]): number[] {
  return row.map((cell) => cell ?? Number.NaN);
}

/** The plan that R's power.R writes as unevenness c, k treatments and b: 0 separate plants, −1 one each, else beds. */
export function planOf(unevenness = Number.NaN, treatments = Number.NaN, b = Number.NaN): Plan {
  const layouts = new Map<number, Plan["beds"]>([
    [0, null],
    [-1, "one each"],
  ]);
  const beds = layouts.get(b);
  return { unevenness, treatments, beds: beds === undefined ? b : beds };
}

/** The unevenness with which +100 % is as far from nothing as `delta` standard deviations are with equal spread. */
export function unevennessFor(delta: number): number {
  return Math.sqrt(2 / 5) / delta;
}
