import { randomSource } from "../../src/numerics/random";

/** A range as Excel hands it over. */
export type Matrix = (number | string)[][];

/** A made-up trial: k treatments, one plant of each in each of n beds. Work for a clock; nothing is read off it. */
export interface Trial {
  readonly amounts: Matrix;
  readonly treatments: Matrix;
  readonly beds: Matrix;
}

/** Numbers around 50, the same for the same seed. */
export function column(length: number, seed: number): number[] {
  const source = randomSource(seed);
  return Array.from({ length }, () => 40 + 20 * source.uniform());
}

export function nested(values: readonly number[]): number[][] {
  return values.map((value) => [value]);
}

export function trial(treatments: number, beds: number, seed: number): Trial {
  const noise = column(treatments * beds, seed);
  const places = [...noise.keys()];
  return {
    amounts: places.map((at) => [(noise[at] ?? 0) + 3 * (at % treatments) + Math.floor(at / treatments)]),
    treatments: places.map((at) => [`way ${at % treatments}`]),
    beds: places.map((at) => [`bed ${Math.floor(at / treatments)}`]),
  };
}
