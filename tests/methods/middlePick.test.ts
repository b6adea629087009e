import { expect, it } from "vitest";
import { middlePick } from "../../src/methods/middlePick";

it.each([
  [[], 0],
  [[0, Number.NaN, -3], 0],
  [[7], 7],
  [[9, 0, 2, Number.NaN, 4], 4],
  [[10, 2, 0, 9], 9],
  [[10, 2, 8, 4], 6],
  [[100, 20, 3], 20],
])("of %j is %d", (amounts, middle) => {
  expect(middlePick(Float64Array.from(amounts))).toBe(middle);
});
