import { randomSource } from "../numerics/random";
import { shuffle } from "../numerics/shuffle";

/** What is to be laid out. */
export interface Layout {
  /** Treatments, 1 or more. */
  readonly treatments: number;
  /** Plants of each treatment in one bed, whole, 1 or more. */
  readonly eachInBed: number;
  /** Beds, whole, 1 or more; separate plants are one bed. */
  readonly beds: number;
}

/**
 * Draws which treatment stands on which spot: for each bed in turn the treatments (by number, from 0) in the order of
 * its spots.
 *
 * A bed begins as all of treatment 0, then all of treatment 1 and so on, and is shuffled; one source of chance, started
 * from the draw number, serves all beds in their order. The recipe may never change: a draw number that somebody wrote
 * down must give its plan again.
 */
export function drawLots({ treatments, eachInBed, beds }: Layout, drawNumber: number): readonly (readonly number[])[] {
  const source = randomSource(drawNumber);
  const bed = Array.from({ length: treatments * eachInBed }, (_, at) => Math.floor(at / eachInBed));
  return Array.from({ length: beds }, () => shuffle(bed, source));
}
