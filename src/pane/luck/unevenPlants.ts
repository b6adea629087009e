import { quantile } from "../../numerics/normal";
import { randomSource } from "../../numerics/random";
import { shuffle } from "../../numerics/shuffle";

/** Grams that courgette plants bear on average, in round figures. */
const average = 3000;

/**
 * Invented weights of plants treated alike: evenly spread over a normal law, so that they differ by just that share of
 * their average, to ten grams. The number settles their order.
 */
export function unevenPlants(count: number, unevenness: number, drawNumber: number): readonly number[] {
  const scores = Array.from({ length: count }, (_, at) => quantile((at + 0.5) / count));
  const deviation = Math.sqrt(scores.reduce((sum, score) => sum + score ** 2, 0) / (count - 1));
  const grams = scores.map((score) => Math.round((average * (1 + (unevenness * score) / deviation)) / 10) * 10);
  return shuffle(grams, randomSource(drawNumber));
}
