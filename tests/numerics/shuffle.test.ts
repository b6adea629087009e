import { expect, it } from "vitest";
import { randomSource } from "../../src/numerics/random";
import { shuffle } from "../../src/numerics/shuffle";

/** A source whose draws are known beforehand. */
function drawing(...draws: readonly number[]) {
  const asked: number[] = [];
  const below = (n: number) => {
    asked.push(n);
    return draws[asked.length - 1] ?? 0;
  };
  return { asked, source: { below, next32: () => 0, uniform: () => 0 } };
}

it("swaps from the last place to the second, as worked by hand", () => {
  // a b c d: place 4 with 1 → d b c a; place 3 with itself; place 2 with 1 → b d c a
  const { asked, source } = drawing(0, 2, 0);
  expect(shuffle(["a", "b", "c", "d"], source)).toEqual(["b", "d", "c", "a"]);
  expect(asked).toEqual([4, 3, 2]);
});

it("leaves the list it was given as it was, and one item or none as they are", () => {
  const items = [1, 2, 3, 4, 5];
  expect([...shuffle(items, randomSource(3))].sort()).toEqual(items);
  expect(items).toEqual([1, 2, 3, 4, 5]);
  const { asked, source } = drawing();
  expect(shuffle(["only"], source)).toEqual(["only"]);
  expect(shuffle([], source)).toEqual([]);
  expect(asked).toEqual([]);
});
