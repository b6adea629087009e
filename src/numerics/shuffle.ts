import type { RandomSource } from "./random";

/**
 * A list in an order drawn by lot, every order equally likely.
 *
 * From the last place to the second, each place is swapped with one drawn among itself and those before it. One draw of
 * `source.below` a place: this too is part of what a draw number stands for.
 *
 * Source: Fisher & Yates (1938), Statistical Tables; Durstenfeld (1964), Communications of the ACM 7 (7), algorithm 235.
 */
export function shuffle<Item>(items: readonly Item[], source: RandomSource): readonly Item[] {
  const order = [...items];
  for (let place = order.length - 1; place > 0; place -= 1) {
    const other = source.below(place + 1);
    [order[place], order[other]] = [order[other] as Item, order[place] as Item];
  }
  return order;
}
